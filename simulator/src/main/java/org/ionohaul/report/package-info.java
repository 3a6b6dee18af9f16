/** Reports a study, and a promise made from one: as text, a page, CSV and JSON. */
@org.jspecify.annotations.NullMarked
package org.ionohaul.report;

/** Renders results as text, HTML, CSV and JSON. */
@org.jspecify.annotations.NullMarked
package org.ionohaul.report;

/** Answers a table of cases, a row each: from the table to a table. */
@org.jspecify.annotations.NullMarked
package org.ionohaul.grid;

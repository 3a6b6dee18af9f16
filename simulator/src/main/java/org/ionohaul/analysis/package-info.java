/** Turns the trials of studies into findings: answers, comparisons, promises and what varying keys changes. */
@org.jspecify.annotations.NullMarked
package org.ionohaul.analysis;

/** Has a learner foretell races, plays them, and tells how well the forecasts hold. */
@org.jspecify.annotations.NullMarked
package org.ionohaul.foresight;

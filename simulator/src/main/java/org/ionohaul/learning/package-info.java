/** Lets a log of runs on the air correct the uncertain inputs of a scenario. */
@org.jspecify.annotations.NullMarked
package org.ionohaul.learning;

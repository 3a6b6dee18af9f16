/** Answers grids on a cluster with Apache Spark: texts and rows go out, lines come back. */
@org.jspecify.annotations.NullMarked
package org.ionohaul.spark;

/**
 * Means of rendering that know nothing of studies: tables, charts and pages, wording of odds, times and sizes, the folder of
 * results.
 */
@org.jspecify.annotations.NullMarked
package org.ionohaul.rendering;

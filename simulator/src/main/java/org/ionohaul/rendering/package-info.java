/** Means of rendering results, which know nothing of studies: tables, charts and pages, wrapped text, how odds, times and sizes are worded, and the folder that the files go to. */
@org.jspecify.annotations.NullMarked
package org.ionohaul.rendering;

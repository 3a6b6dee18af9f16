/** Says what SINR each end gives at any instant; schedules nothing. */
@org.jspecify.annotations.NullMarked
package org.ionohaul.channel;

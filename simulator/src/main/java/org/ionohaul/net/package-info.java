/**
 * Lets many stations share channels and one gateway: who writes what when, who calls when, who is answered.
 *
 * <p>Station 0 is the gateway; the others are numbered from 1. Messages ({@link Letter}) are written by a plan, operators call by
 * rules, and what a call comes to is the affair of {@link Conversations}: real sessions on the air, or an ideal service against
 * which the rest is held to queueing theory.
 */
@org.jspecify.annotations.NullMarked
package org.ionohaul.net;

/**
 * Moves frames over a half-duplex link: ARQ, turnarounds, rate policies.
 *
 * <p>The rules that hold throughout:
 *
 * <ul>
 *   <li>A receiver answers an over of which it decoded at least one frame, and each poll; else it stays silent, for it
 *       can't tell who sent it.
 *   <li>What is held and what is missing is counted in bytes. While the data rate stays, a repeated frame equals its first
 *       copy; when it changes, all that is missing is cut into frames of the new size and the combining store is emptied.
 *   <li>Between the last symbol heard and the first one sent, a station leaves the longer of what it needs itself
 *       (processing, relays) and what the other needs before it can hear (hang, relays, recovery).
 *   <li>With cumulative acknowledgements the sender knows nothing of the frames after the first missing one, and tells its
 *       rate policy so.
 *   <li>A poll counts as a silence like an over, but says nothing about the data rate.
 * </ul>
 */
@org.jspecify.annotations.NullMarked
package org.ionohaul.link;

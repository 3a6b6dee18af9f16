/**
 * Takes files from dialling to hang-up, through lost links and resumption.
 *
 * <p>The rules that hold throughout:
 *
 * <ul>
 *   <li>The station that dials leads until it asks for the other's files; from the first offer on the other one leads. Who
 *       leads repeats until answered, and only the leader has a short timer, so that the two never talk at once for long.
 *   <li>A call reaches the called station in any state; it drops the old link for the new one.
 *   <li>Resuming goes on after the last byte held in order; restarting throws the unfinished file away and keeps the
 *       finished ones.
 *   <li>The session ends for the station that dialled when it knows that all is done, or gives up. A station that holds
 *       everything and hears nothing more does not dial anew.
 *   <li>The books know both ends and decide nothing: a gap before a burst that answers at once is a turnaround, any other
 *       gap is silence, and dialling, introductions, redialling and hanging up swallow all time of their phase.
 * </ul>
 */
@org.jspecify.annotations.NullMarked
package org.ionohaul.session;

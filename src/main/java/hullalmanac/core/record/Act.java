package hullalmanac.core.record;

import java.time.Instant;
import java.util.Optional;

/**
 * One change of the record as a person sees it, from the change log.
 *
 * @param device the computer it was done on
 * @param what in words
 * @param undoes the act that it took back; absent for one that took nothing back
 */
public record Act(Id<Act> id, Instant at, String device, String what, Optional<Id<Act>> undoes) {}

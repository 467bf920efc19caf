package hullalmanac.core.exposure;

import hullalmanac.core.record.Berth;
import java.time.LocalDate;

/** Days from {@code from} up to but not including {@code until} at one berth. */
public record Stay(LocalDate from, LocalDate until, Berth berth) {}

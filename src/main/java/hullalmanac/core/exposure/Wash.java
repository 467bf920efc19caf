package hullalmanac.core.exposure;

import hullalmanac.core.record.WashStrength;
import java.time.LocalDate;

/** A washing or decontamination of a surface. */
public record Wash(LocalDate day, WashStrength strength) {}

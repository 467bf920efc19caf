package hullalmanac.present.sheet;

import hullalmanac.core.record.Pixels;
import java.util.Optional;

/**
 * A small picture for a photo's card.
 *
 * @param words what stands there instead where there is none
 */
public record Picture(Optional<Pixels> pixels, String words) {}

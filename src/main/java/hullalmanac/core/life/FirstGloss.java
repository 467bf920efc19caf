package hullalmanac.core.life;

import hullalmanac.core.record.Finding;

/**
 * The gloss reading that later ones are held against.
 *
 * @param settled whether it was read 7 to 21 days after laying and after a wash, and not before
 */
record FirstGloss(Finding finding, boolean settled) {}

package hullalmanac.core.record;

/** How a coat answers to washing: the three rows of the wash-wear table. */
public enum CoatClass {
  WAX,
  SEALANT,
  SILICA
}

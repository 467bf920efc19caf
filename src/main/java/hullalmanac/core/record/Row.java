package hullalmanac.core.record;

/** One row of a record, of any kind but the business. */
public sealed interface Row
    permits Harbour,
        Party,
        Boat,
        Role,
        Surface,
        Berth,
        CarePlan,
        Product,
        Bottle,
        Visit,
        Step,
        Coat,
        Duty,
        Finding,
        Photo,
        ListReading,
        Wording,
        Reminder,
        Rate,
        Estimate,
        Invoice,
        Payment,
        Trip,
        Expense {
  /** Its identity within the record. */
  Id<? extends Row> id();

  /** The person's own id of it, unique among rows of its kind. */
  String key();
}

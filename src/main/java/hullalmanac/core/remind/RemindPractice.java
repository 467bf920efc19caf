package hullalmanac.core.remind;

import hullalmanac.core.record.Business;
import hullalmanac.core.record.Practice;
import hullalmanac.core.record.PracticeValue;

/**
 * How early, how often and about what somebody is told. Every number is common practice, no source.
 *
 * @param leadWeeks how many weeks ahead a boat counts as due
 * @param togetherDays what is due within so many days is told together
 * @param quietDays after a word to an owner, nothing more is told of the boat for so long
 * @param planDays a care plan that begins again is told so many days ahead
 * @param movedDays a date that moved so far since it was told is pointed out
 */
public record RemindPractice(
    long leadWeeks, long togetherDays, long quietDays, long planDays, long movedDays) {
  /**
   * Turns of a care plan that follow each other within so many days are one run, which is told at
   * its first.
   */
  static final int ONE_RUN_DAYS = 56;

  /** However quiet it is to be: so many days before a date its owner is told. */
  static final int LAST_CALL_DAYS = 14;

  /** What a business goes by. */
  public static RemindPractice of(Business business) {
    Practice practice = business.practice();
    return new RemindPractice(
        business.habits().leadWeeks(),
        Math.round(practice.of(PracticeValue.TOLD_TOGETHER)),
        Math.round(practice.of(PracticeValue.QUIET_DAYS)),
        Math.round(practice.of(PracticeValue.PLAN_AHEAD)),
        Math.round(practice.of(PracticeValue.MOVED_DAYS)));
  }
}

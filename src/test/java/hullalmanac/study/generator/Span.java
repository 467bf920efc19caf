package hullalmanac.study.generator;

import java.time.LocalDate;

/** A stretch of days, as numbers of days since 1970, with what the calendar says of each. */
final class Span {
  private final int first;
  private final int last;
  private final int[] monthAndDay;

  Span(LocalDate first, LocalDate last) {
    this.first = number(first);
    this.last = number(last);
    this.monthAndDay = new int[length()];
    for (int i = 0; i < monthAndDay.length; i++) {
      monthAndDay[i] = monthAndDay(first.plusDays(i));
    }
  }

  static int number(LocalDate day) {
    return Math.toIntExact(day.toEpochDay());
  }

  static LocalDate date(int day) {
    return LocalDate.ofEpochDay(day);
  }

  /** 1231 for the last day of a year. */
  static int monthAndDay(LocalDate day) {
    return day.getMonthValue() * 100 + day.getDayOfMonth();
  }

  int first() {
    return first;
  }

  int last() {
    return last;
  }

  int length() {
    return last - first + 1;
  }

  /** The month and day at a place counted from the first day. */
  int monthAndDayAt(int index) {
    return monthAndDay[index];
  }
}

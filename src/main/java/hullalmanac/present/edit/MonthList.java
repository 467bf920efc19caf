package hullalmanac.present.edit;

import hullalmanac.core.entry.Entry;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Months as people write them: {@code 4-10}, {@code 11-2}, {@code 3, 5, 9}. */
final class MonthList {
  private static final String ADVICE = "Write months as 4-10 or 3, 5, 9.";

  private MonthList() {}

  static Entry<List<Month>> read(String text) {
    List<Month> all = new ArrayList<>();
    for (String part : text.split(",")) {
      String[] ends = part.strip().split("\\s*[-–]\\s*", -1);
      if (part.isBlank()) {
        continue;
      }
      if (ends.length > 2 || !isMonth(ends[0]) || !isMonth(ends[ends.length - 1])) {
        return new Entry.Refused<>(ADVICE);
      }
      Month month = Month.of(Integer.parseInt(ends[0]));
      Month last = Month.of(Integer.parseInt(ends[ends.length - 1]));
      all.add(month);
      while (month != last) {
        month = month.plus(1);
        all.add(month);
      }
    }
    List<Month> months = all.stream().distinct().sorted().toList();
    return months.isEmpty() ? new Entry.Empty<>() : new Entry.Read<>(months, "");
  }

  private static boolean isMonth(String text) {
    return text.matches("0?[1-9]|1[0-2]");
  }

  static String text(List<Month> months) {
    boolean run =
        months.size() > 2
            && months.get(months.size() - 1).getValue() - months.get(0).getValue()
                == months.size() - 1;
    return run
        ? months.get(0).getValue() + "-" + months.get(months.size() - 1).getValue()
        : months.stream().map(m -> String.valueOf(m.getValue())).collect(Collectors.joining(", "));
  }
}

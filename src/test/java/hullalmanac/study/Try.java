package hullalmanac.study;

import hullalmanac.core.exposure.WearPractice;
import hullalmanac.study.generator.SecondLaw.*;
import java.util.*;

public class Try {
  public static void main(String[] a) {
    int n = Integer.parseInt(a[0]), boats = Integer.parseInt(a[1]);
    List<Score> all = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      long t = System.nanoTime();
      Fleet f =
          Fleets.of(new Plan(100 + i, boats, 6, a[2].equals("honest"), !a[3].equals("water")));
      long t2 = System.nanoTime();
      List<Score> s = Fleets.scores(f, WearPractice.usual());
      all.addAll(s);
      System.out.printf(
          "%d coats %d findings %d visits %d serving %d  gen %.1fs score %.2fs cov %.3f below %.3f err %.0f label %.0f%n",
          i,
          f.almanac().coats().size(),
          f.almanac().findings().size(),
          f.almanac().visits().size(),
          s.size(),
          (t2 - t) / 1e9,
          (System.nanoTime() - t2) / 1e9,
          s.stream().mapToDouble(x -> x.held() ? 1 : 0).average().getAsDouble(),
          s.stream().mapToDouble(x -> x.below() ? 1 : 0).average().getAsDouble(),
          med(s, 1),
          med(s, 2));
    }
    for (var k : hullalmanac.core.record.ProductKind.values()) {
      var s = all.stream().filter(x -> x.product() == k).toList();
      if (!s.isEmpty())
        System.out.printf(
            "%s %d cov %.3f below %.3f err %.0f label %.0f%n",
            k,
            s.size(),
            s.stream().mapToDouble(x -> x.held() ? 1 : 0).average().getAsDouble(),
            s.stream().mapToDouble(x -> x.below() ? 1 : 0).average().getAsDouble(),
            med(s, 1),
            med(s, 2));
    }
    System.out.printf(
        "all cov %.3f below %.3f ratio %.3f%n",
        all.stream().mapToDouble(x -> x.held() ? 1 : 0).average().getAsDouble(),
        all.stream().mapToDouble(x -> x.below() ? 1 : 0).average().getAsDouble(),
        med(all, 1) / med(all, 2));
  }

  static double med(List<Score> s, int w) {
    double[] d =
        s.stream().mapToDouble(x -> w == 1 ? x.error() : x.labelError()).sorted().toArray();
    return d[d.length / 2];
  }
}

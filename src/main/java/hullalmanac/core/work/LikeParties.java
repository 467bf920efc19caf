package hullalmanac.core.work;

import hullalmanac.core.record.Party;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Finds parties that may be one and the same: by mail, by phone, by name. Common practice, no
 * source: a phone number with its country and one without are the same where the shorter has seven
 * digits or more; a name is the same with its words in any order, accents and case left out.
 */
public final class LikeParties {
  private static final int SHORTEST_PHONE = 7;

  private LikeParties() {}

  /** Pairs within a list, each once. */
  public static List<Alike> pairs(List<Party> parties) {
    List<Alike> pairs = new ArrayList<>();
    for (int i = 0; i < parties.size(); i++) {
      for (Party other : parties.subList(i + 1, parties.size())) {
        Set<Alike.Sign> signs = signs(parties.get(i), other);
        if (!signs.isEmpty()) {
          pairs.add(new Alike(parties.get(i), other, signs));
        }
      }
    }
    return List.copyOf(pairs);
  }

  /** Those of a list that may be the same as another, the likeliest first. */
  static List<Alike> to(Party other, List<Party> known) {
    return known.stream()
        .map(k -> new Alike(k, other, signs(k, other)))
        .filter(a -> !a.signs().isEmpty())
        .sorted(
            Comparator.comparing((Alike a) -> a.signs().iterator().next())
                .thenComparing(a -> -a.signs().size())
                .thenComparing(a -> a.known().id()))
        .toList();
  }

  private static Set<Alike.Sign> signs(Party a, Party b) {
    Set<Alike.Sign> signs = EnumSet.noneOf(Alike.Sign.class);
    if (sameMail(a.email(), b.email())) {
      signs.add(Alike.Sign.MAIL);
    }
    if (samePhone(a.phone(), b.phone())) {
      signs.add(Alike.Sign.PHONE);
    }
    if (sameName(a.name(), b.name())) {
      signs.add(Alike.Sign.NAME);
    }
    return signs;
  }

  static boolean sameMail(String a, String b) {
    return !a.isBlank()
        && a.strip().toLowerCase(Locale.ROOT).equals(b.strip().toLowerCase(Locale.ROOT));
  }

  static boolean samePhone(String a, String b) {
    String one = digits(a);
    String two = digits(b);
    String shorter = one.length() < two.length() ? one : two;
    String longer = one.length() < two.length() ? two : one;
    return shorter.length() >= SHORTEST_PHONE && longer.endsWith(shorter);
  }

  static boolean sameName(String a, String b) {
    String words = words(a);
    return !words.isEmpty() && words.equals(words(b));
  }

  /** The digits of a number, without those that only say that a number follows. */
  private static String digits(String phone) {
    return phone.replaceAll("[^\\p{Nd}]", "").replaceFirst("^0+", "");
  }

  private static String words(String name) {
    String plain =
        Normalizer.normalize(name, Normalizer.Form.NFKD)
            .replaceAll("\\p{M}+", "")
            .toLowerCase(Locale.ROOT);
    return Stream.of(plain.split("[^\\p{L}\\p{Nd}]+"))
        .filter(w -> !w.isEmpty())
        .sorted()
        .collect(Collectors.joining(" "));
  }
}

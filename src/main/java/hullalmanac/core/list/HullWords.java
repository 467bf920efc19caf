package hullalmanac.core.list;

import hullalmanac.core.find.Folding;
import hullalmanac.core.record.BoatType;
import hullalmanac.core.record.Finish;
import hullalmanac.core.record.Tone;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Reads what people write of a hull: what type of boat it belongs to, what it is made of, whether
 * it is light or dark. In English, German, French, Spanish, Italian and Dutch (common usage, no
 * source; from memory).
 */
final class HullWords {
  private static final List<Words<BoatType>> TYPES =
      List.of(
          new Words<>(BoatType.CATAMARAN, "catamaran cat katamaran multihull maxi"),
          new Words<>(BoatType.KETCH, "ketch ketsch yawl"),
          new Words<>(
              BoatType.SLOOP,
              "sloop sail sailing sailboat sailer sy segel segelyacht segelboot segler voilier velero"
                  + " vela zeiljacht zeilboot zeil"),
          new Words<>(BoatType.TRAWLER, "trawler"),
          new Words<>(BoatType.EXPRESS_CRUISER, "express"),
          new Words<>(BoatType.CENTRE_CONSOLE, "centre center console cc"),
          new Words<>(BoatType.RIB, "rib inflatable schlauchboot semirigide semirrigida gommone"),
          new Words<>(BoatType.DAY_BOAT, "day dayboat daysailer open runabout launch"),
          new Words<>(
              BoatType.MOTOR_CRUISER,
              "motor motorboat motoryacht motorboot motorjacht cruiser power powerboat my vedette"
                  + " moteur lancha motore flybridge"));

  private static final List<Words<Finish>> FINISHES =
      List.of(
          new Words<>(
              Finish.GELCOAT,
              "gelcoat grp frp gfk gvk fibreglass fiberglass glassfibre polyester polyster stratifie"
                  + " vetroresina poliester prfv"),
          new Words<>(
              Finish.URETHANE_PAINT,
              "paint painted urethane lacquer lackiert lack peint peinte peinture pintado verniciato"
                  + " geverfd"),
          new Words<>(Finish.VINYL, "vinyl wrap wrapped folie foliert"),
          new Words<>(Finish.BARE_ALUMINIUM, "aluminium aluminum alu alluminio aluminio"),
          new Words<>(Finish.INFLATABLE_TUBE, "hypalon pvc tube tubes"));

  /** The shade before the colour, so that "light blue" is light. */
  private static final Set<String> LIGHTER =
      Set.of(
          "light",
          "pale",
          "off",
          "hell",
          "helle",
          "hellblau",
          "hellgrau",
          "clair",
          "claro",
          "chiaro",
          "licht",
          "lichtblauw");

  private static final Set<String> DARKER =
      Set.of("dark", "dunkel", "dunkelblau", "fonce", "oscuro", "scuro", "donker", "donkerblauw");

  private static final Set<String> LIGHT =
      Set.of(
          "light",
          "white",
          "cream",
          "ivory",
          "beige",
          "sand",
          "weiss",
          "creme",
          "blanc",
          "blanche",
          "blanco",
          "bianco",
          "wit",
          "ecru",
          "yellow",
          "gelb",
          "jaune",
          "hellblau",
          "hellgrau");

  private static final Set<String> DARK =
      Set.of(
          "dark",
          "navy",
          "black",
          "blue",
          "green",
          "red",
          "burgundy",
          "maroon",
          "brown",
          "anthracite",
          "schwarz",
          "blau",
          "marineblau",
          "grun",
          "rot",
          "dunkelblau",
          "noir",
          "bleu",
          "marine",
          "vert",
          "rouge",
          "negro",
          "azul",
          "verde",
          "rojo",
          "nero",
          "blu",
          "rosso",
          "zwart",
          "blauw",
          "groen",
          "rood",
          "donkerblauw",
          "anthrazit");

  private HullWords() {}

  private record Words<T>(T value, Set<String> words) {
    Words(T value, String words) {
      this(value, Set.of(words.split(" ")));
    }
  }

  private static <T> Optional<T> only(List<Words<T>> all, String text) {
    List<String> words = Folding.words(text);
    List<T> found =
        all.stream()
            .filter(w -> words.stream().anyMatch(w.words()::contains))
            .map(Words::value)
            .toList();
    return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
  }

  /** The type of boat that a text names. */
  static Optional<BoatType> type(String text) {
    return hullalmanac.core.record.Coded.parse(BoatType.class, text).or(() -> firstOf(TYPES, text));
  }

  /** "Sailing catamaran" is a catamaran: the narrower words stand first. */
  private static Optional<BoatType> firstOf(List<Words<BoatType>> all, String text) {
    List<String> words = Folding.words(text);
    return all.stream()
        .filter(w -> words.stream().anyMatch(w.words()::contains))
        .map(Words::value)
        .findFirst();
  }

  /** What a hull is finished with, where the words leave no doubt. */
  static Optional<Finish> finish(String text) {
    return only(FINISHES, text);
  }

  /** Whether a hull is light or dark, where the words leave no doubt. */
  static Optional<Tone> tone(String text) {
    List<String> words = Folding.words(text);
    if (words.stream().anyMatch(LIGHTER::contains)) {
      return words.stream().anyMatch(DARKER::contains) ? Optional.empty() : Optional.of(Tone.LIGHT);
    }
    Set<Tone> tones = new LinkedHashSet<>();
    for (String word : words) {
      if (LIGHT.contains(word)) {
        tones.add(Tone.LIGHT);
      } else if (DARK.contains(word) || DARKER.contains(word)) {
        tones.add(Tone.DARK);
      }
    }
    return tones.size() == 1 ? Optional.of(tones.iterator().next()) : Optional.empty();
  }
}

package hullalmanac.core.list;

import hullalmanac.core.find.Folding;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Coded;
import hullalmanac.core.record.Party;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Who the owners of a list are: each line's owner is somebody of the record, of a line above, or
 * new.
 */
final class People {
  private static final int LEAST_DIGITS = 6;

  private final ListChoices choices;
  private final List<Person> people = new ArrayList<>();
  private final Map<String, Person> byLine = new HashMap<>();
  private final Map<String, List<Person>> byTrace = new HashMap<>();
  private final List<Alike> alikes = new ArrayList<>();
  private final List<Aside> asides = new ArrayList<>();

  /** One person, with all lines that speak of them. */
  static final class Person {
    private final Optional<Party> known;
    private final List<Line> lines = new ArrayList<>();

    Person(Optional<Party> known) {
      this.known = known;
    }

    Optional<Party> known() {
      return known;
    }

    List<Line> lines() {
      return lines;
    }

    private Line.Owner first() {
      return known
          .map(
              p -> new Line.Owner(p.name(), p.kind(), p.phone(), p.email(), p.address(), List.of()))
          .orElseGet(() -> lines.get(0).owner());
    }

    private String where() {
      return known.isPresent() ? "the record" : Aside.place(lines.get(0).row());
    }
  }

  People(Almanac almanac, List<Line> lines, ListChoices choices) {
    this.choices = choices;
    almanac.parties().stream()
        .sorted(Comparator.comparing(Party::key))
        .forEach(p -> note(new Person(Optional.of(p))));
    lines.stream().filter(Line::hasOwner).forEach(this::line);
  }

  /** All who are new or of whom the list says something. */
  List<Person> all() {
    return people.stream().filter(p -> !p.lines().isEmpty()).toList();
  }

  /** The owner of a line; absent where there is none or they are left out. */
  Optional<Person> of(Line line) {
    return Optional.ofNullable(byLine.get(line.id()));
  }

  /** The person who is a party of the record. */
  Optional<Person> of(Party party) {
    return people.stream().filter(p -> p.known().equals(Optional.of(party))).findFirst();
  }

  List<Alike> alikes() {
    return List.copyOf(alikes);
  }

  List<Aside> asides() {
    return List.copyOf(asides);
  }

  private void note(Person person) {
    people.add(person);
    traces(person.first())
        .forEach(t -> byTrace.computeIfAbsent(t, x -> new ArrayList<>()).add(person));
  }

  /** What two people have in common if they may be the same. */
  private static List<String> traces(Line.Owner owner) {
    List<String> traces = new ArrayList<>();
    traces.add("name " + Shape.person(owner.name()));
    numbers(owner.phone()).forEach(n -> traces.add("phone " + tail(n)));
    mails(owner.mail()).forEach(m -> traces.add("mail " + m));
    return traces;
  }

  private static String tail(String digits) {
    return digits.substring(digits.length() - LEAST_DIGITS);
  }

  private static List<String> numbers(String phone) {
    return Arrays.stream(phone.split("[,;/\\n]"))
        .map(p -> Folding.digits(p).replaceFirst("^0+", ""))
        .filter(d -> d.length() >= LEAST_DIGITS)
        .toList();
  }

  /** Whether two texts are the same one phone number, however it is spaced. */
  static boolean samePhone(String a, String b) {
    List<String> x = numbers(a);
    return x.size() == 1 && x.equals(numbers(b)) && !Shape.hasLetter(a) && !Shape.hasLetter(b);
  }

  /** Whether two texts may be one phone number, perhaps with the code of a country before it. */
  static boolean agree(String a, String b) {
    return !Shape.hasLetter(a) && !Shape.hasLetter(b) && shared(numbers(a), numbers(b));
  }

  private static List<String> mails(String mail) {
    return Arrays.stream(mail.toLowerCase(Locale.ROOT).split("[\\s,;]+"))
        .filter(m -> !m.isEmpty())
        .toList();
  }

  private void line(Line line) {
    Optional<Person> certain =
        candidates(line).filter(p -> isCertain(line.owner(), p.first())).findFirst();
    Optional<Person> other = certain.or(() -> candidates(line).findFirst());
    boolean plain = certain.isPresent() && certain.get().known().isEmpty();
    if (other.isEmpty()) {
      add(line, new Person(Optional.empty()));
    } else if (plain) {
      add(line, certain.get());
    } else {
      ask(line, other.get(), certain.isPresent());
    }
  }

  private Stream<Person> candidates(Line line) {
    return traces(line.owner()).stream()
        .flatMap(t -> byTrace.getOrDefault(t, List.of()).stream())
        .distinct()
        .sorted(Comparator.comparing((Person p) -> !spokenOf(p, line.owner())));
  }

  private void ask(Line line, Person other, boolean certain) {
    String id = "owner " + line.id();
    Same choice =
        choices
            .answer(id)
            .flatMap(a -> Coded.parse(Same.class, a))
            .orElse(certain ? Same.SAME : Same.ANOTHER);
    boolean askedBefore = certain && spokenOf(other, line.owner());
    if (!askedBefore) {
      alikes.add(
          new Alike(
              id,
              new Alike.Who(line.row(), false, line.owner().name()),
              other.where(),
              certain,
              why(line.owner(), other.first()),
              choice,
              facts(line.owner(), other.first())));
    }
    switch (askedBefore ? Same.SAME : choice) {
      case SAME -> add(line, other);
      case ANOTHER -> add(line, new Person(Optional.empty()));
      default ->
          asides.add(
              new Aside(
                  Aside.place(line.row()),
                  texts(line.owner()),
                  "the owner is left out, as you chose"));
    }
  }

  /** Whether a line above says the same of a person. */
  private static boolean spokenOf(Person person, Line.Owner owner) {
    return person.lines().stream().anyMatch(l -> same(l.owner(), owner));
  }

  private static boolean same(Line.Owner a, Line.Owner b) {
    return Shape.person(a.name()).equals(Shape.person(b.name()))
        && a.phone().equals(b.phone())
        && a.mail().equals(b.mail());
  }

  private static String texts(Line.Owner o) {
    List<String> texts = new ArrayList<>(List.of(o.name(), o.phone(), o.mail(), o.address()));
    texts.addAll(o.notes());
    texts.removeIf(String::isEmpty);
    return String.join(" · ", texts);
  }

  private void add(Line line, Person person) {
    person.lines().add(line);
    byLine.put(line.id(), person);
    if (person.lines().size() == 1 && person.known().isEmpty()) {
      note(person);
    } else {
      traces(line.owner())
          .forEach(
              t -> {
                List<Person> there = byTrace.computeIfAbsent(t, x -> new ArrayList<>());
                if (!there.contains(person)) {
                  there.add(person);
                }
              });
    }
  }

  /** Whether a name is the same, and neither phone nor mail speaks against it. */
  private static boolean isCertain(Line.Owner a, Line.Owner b) {
    boolean name = Shape.person(a.name()).equals(Shape.person(b.name()));
    boolean phone = shared(numbers(a.phone()), numbers(b.phone()));
    boolean mail = shared(mails(a.mail()), mails(b.mail()));
    boolean phoneOpen = numbers(a.phone()).isEmpty() || numbers(b.phone()).isEmpty();
    boolean mailOpen = mails(a.mail()).isEmpty() || mails(b.mail()).isEmpty();
    return name && (phone || mail || (phoneOpen && mailOpen));
  }

  private static boolean shared(List<String> a, List<String> b) {
    return a.stream().anyMatch(x -> b.stream().anyMatch(y -> x.endsWith(y) || y.endsWith(x)));
  }

  private static String why(Line.Owner a, Line.Owner b) {
    List<String> why = new ArrayList<>();
    if (Shape.person(a.name()).equals(Shape.person(b.name()))) {
      why.add("name");
    }
    if (shared(numbers(a.phone()), numbers(b.phone()))) {
      why.add("phone");
    }
    if (shared(mails(a.mail()), mails(b.mail()))) {
      why.add("mail");
    }
    return "the same " + String.join(" and ", why);
  }

  private static List<Alike.Fact> facts(Line.Owner a, Line.Owner b) {
    return Stream.of(
            new Alike.Fact("Owner", a.name(), b.name()),
            new Alike.Fact("Phone", a.phone(), b.phone()),
            new Alike.Fact("Mail", a.mail(), b.mail()),
            new Alike.Fact("Address", a.address(), b.address()))
        .filter(f -> !f.inList().isEmpty() || !f.there().isEmpty())
        .toList();
  }
}

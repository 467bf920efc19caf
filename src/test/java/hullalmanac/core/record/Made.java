package hullalmanac.core.record;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.TreeSet;

/** A small record made step by step for tests: one harbour, one boat, and what a test adds. */
public final class Made {
  private final IdSource ids;
  private final List<Harbour> harbours = new ArrayList<>();
  private final List<Boat> boats = new ArrayList<>();
  private final List<Surface> surfaces = new ArrayList<>();
  private final List<Berth> berths = new ArrayList<>();
  private final List<Product> products = new ArrayList<>();
  private final List<Visit> visits = new ArrayList<>();
  private final List<Step> steps = new ArrayList<>();
  private final List<Coat> coats = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();
  private Business business = Business.unnamed();

  public Made(double latitude) {
    this(latitude, 7);
  }

  /**
   * @param seed of its ids
   */
  public Made(double latitude, long seed) {
    ids = new IdSource(new Random(seed)::nextLong);
    harbours.add(new Harbour(ids.next(), "h", "Quillhaven", latitude, List.of(), ""));
    boats.add(
        new Boat(
            ids.next(),
            "tern",
            "Arctic Tern",
            BoatType.SLOOP,
            Optional.of(Length.ofFeet(31, 2)),
            Optional.empty(),
            Optional.empty(),
            "",
            Optional.of(2001),
            Use.WEEKENDS,
            BoatStatus.ACTIVE,
            Optional.empty(),
            ""));
  }

  public Boat boat() {
    return boats.get(0);
  }

  /** Another harbour, not of this record. */
  public Harbour harbour(String key) {
    return new Harbour(ids.next(), key, "Fallow Creek", 48.3, List.of(), "");
  }

  public Harbour harbour() {
    return harbours.get(0);
  }

  public Made risk(double risk) {
    business = With.component(business, "risk", Optional.of(risk));
    return this;
  }

  public Surface surface(SurfaceKind kind, Side side, Tone tone, Finish finish) {
    Surface s =
        new Surface(
            ids.next(),
            "s" + surfaces.size(),
            boat().id(),
            kind,
            side,
            "",
            finish,
            tone,
            kind.usualAttitude(),
            Optional.empty(),
            Past.UNKNOWN,
            false,
            Optional.empty(),
            "");
    surfaces.add(s);
    return s;
  }

  public Surface topsides() {
    return surface(SurfaceKind.TOPSIDES, Side.BOTH, Tone.LIGHT, Finish.GELCOAT);
  }

  public Berth berth(
      Cover cover, Water water, LocalDate from, Optional<LocalDate> until, boolean yearly) {
    return berth(cover, water, from, until, yearly, Optional.empty());
  }

  public Berth berth(
      Cover cover,
      Water water,
      LocalDate from,
      Optional<LocalDate> until,
      boolean yearly,
      Optional<Integer> bow) {
    Berth b =
        new Berth(
            ids.next(),
            "b" + berths.size(),
            boat().id(),
            harbour().id(),
            cover,
            water,
            from,
            until,
            yearly,
            Optional.empty(),
            bow,
            Berth.Access.UNKNOWN,
            Berth.Private.NOTHING);
    berths.add(b);
    return b;
  }

  public Berth open(LocalDate from) {
    return berth(Cover.OPEN, Water.SALT, from, Optional.empty(), false);
  }

  public Product product(ProductKind kind, Optional<Double> labelMonths) {
    Product p =
        new Product(
            ids.next(),
            "p" + products.size(),
            "product " + products.size(),
            kind,
            labelMonths,
            false,
            Optional.empty(),
            Optional.empty(),
            false,
            false,
            new TreeSet<>(),
            Product.Handling.UNKNOWN,
            "");
    products.add(p);
    return p;
  }

  public Coat coat(Surface s, Product p, LocalDate laid) {
    return coat(s, p, Optional.of(laid), Optional.empty(), Optional.empty());
  }

  public Coat coat(
      Surface s,
      Product p,
      Optional<LocalDate> laid,
      Optional<LocalDate> known,
      Optional<Id<Coat>> over) {
    Coat c =
        new Coat(
            ids.next(),
            "c" + coats.size(),
            s.id(),
            p.id(),
            laid,
            known,
            Optional.empty(),
            Optional.empty(),
            "",
            1,
            over,
            Optional.empty(),
            "");
    coats.add(c);
    return c;
  }

  public Visit visit(LocalDate day, VisitWhy why) {
    Visit v =
        new Visit(
            ids.next(),
            "v" + visits.size(),
            boat().id(),
            day,
            VisitStatus.DONE,
            why,
            Optional.empty(),
            Optional.empty(),
            Handover.NOT_YET,
            List.of(),
            List.of(),
            "");
    visits.add(v);
    return v;
  }

  public Step step(Visit visit, StepKind kind, Optional<Product> product) {
    Step s =
        new Step(
            ids.next(),
            "st" + steps.size(),
            visit.id(),
            steps.size() + 1,
            kind,
            visit.day(),
            List.of(),
            product.map(Product::id),
            Optional.empty(),
            Optional.empty(),
            "",
            "",
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            "");
    steps.add(s);
    return s;
  }

  public Finding finding(
      Surface s,
      LocalDate day,
      SurfaceState state,
      Entered entered,
      Optional<Visit> visit,
      Observation seen) {
    Finding f =
        new Finding(
            ids.next(),
            "f" + findings.size(),
            s.id(),
            visit.map(Visit::id),
            day,
            state,
            entered,
            seen,
            "");
    findings.add(f);
    return f;
  }

  public Finding water(Surface s, LocalDate day, SurfaceState state, WaterBehaviour seen) {
    return finding(s, day, state, Entered.GRID, Optional.empty(), new Observation.WaterSeen(seen));
  }

  public Almanac almanac() {
    return new Almanac(
        business, harbours, List.of(), boats, List.of(), surfaces, berths, List.of(), products,
        List.of(), visits, steps, coats, List.of(), findings, List.of());
  }
}

package hullalmanac.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaConstructorCall;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The walls of the house: who may import whom, and the few habits that a compiler does not hold.
 * There are no exemptions; a rule that hurts is changed here, with a numbered decision.
 */
@AnalyzeClasses(packages = "hullalmanac", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
  private static final Set<String> AMBIENT =
      Set.of("currentTimeMillis", "getenv", "getProperty", "exit");
  private static final String[] JAVA_OF_CORE = {
    "java.lang..",
    "java.util",
    "java.util.function..",
    "java.util.stream..",
    "java.util.regex..",
    "java.math..",
    "java.time..",
    "java.text.."
  };

  @ArchTest
  static final ArchRule layersImportDownwardOnly =
      layeredArchitecture()
          .consideringOnlyDependenciesInLayers()
          .withOptionalLayers(true)
          .layer("core")
          .definedBy("hullalmanac.core..")
          .layer("solve")
          .definedBy("hullalmanac.solve..")
          .layer("chart")
          .definedBy("hullalmanac.chart..")
          .layer("store")
          .definedBy("hullalmanac.store..")
          .layer("exchange")
          .definedBy("hullalmanac.exchange..")
          .layer("service")
          .definedBy("hullalmanac.service..")
          .layer("present")
          .definedBy("hullalmanac.present..")
          .layer("ui")
          .definedBy("hullalmanac.ui..")
          .layer("cli")
          .definedBy("hullalmanac.cli..")
          .layer("app")
          .definedBy("hullalmanac.app..")
          .whereLayer("core")
          .mayNotAccessAnyLayer()
          .whereLayer("solve")
          .mayOnlyAccessLayers("core")
          .whereLayer("chart")
          .mayOnlyAccessLayers("core")
          .whereLayer("store")
          .mayOnlyAccessLayers("core")
          .whereLayer("exchange")
          .mayOnlyAccessLayers("core", "chart")
          .whereLayer("service")
          .mayOnlyAccessLayers("core", "store", "exchange")
          .whereLayer("present")
          .mayOnlyAccessLayers("core", "service")
          .whereLayer("ui")
          .mayOnlyAccessLayers("core", "chart", "present")
          .whereLayer("cli")
          .mayOnlyAccessLayers("core", "service")
          .whereLayer("app")
          .mayNotBeAccessedByAnyLayer()
          .ensureAllClassesAreContainedInArchitecture()
          .because(
              "a change in one layer must not be felt above the next (DEVELOPERS.md, the house)");

  @ArchTest
  static final ArchRule coreIsPure =
      classes()
          .that()
          .resideInAPackage("hullalmanac.core..")
          .should()
          .onlyDependOnClassesThat(
              resideInAnyPackage(JAVA_OF_CORE)
                  .or(resideInAnyPackage("hullalmanac.core..", "org.apache.commons.statistics.."))
                  .or(
                      DescribedPredicate.describe(
                          "arrays of plain values", JavaClass::isPrimitive)))
          .because(
              "what is reckoned must be repeatable anywhere: no files, clock, network, threads or toolkits");

  /**
   * What each layer may use from outside: a row of the table in DEVELOPERS.md. A package with a row
   * of its own is held to that row alone.
   */
  private static final Map<String, List<String>> OUTSIDE =
      Map.ofEntries(
          Map.entry("chart", List.of("java.awt..", "org.jfree..")),
          Map.entry(
              "store",
              List.of("java.sql..", "org.sqlite..", "java.io..", "java.nio..", "java.security..")),
          Map.entry(
              "exchange",
              List.of("java.io..", "java.nio..", "java.security..", "de.siegmar.fastcsv..")),
          Map.entry("exchange.guide", List.of("java.nio..", "org.commonmark..")),
          Map.entry("exchange.letter", List.of("com.samskivert.mustache..")),
          Map.entry(
              "exchange.list",
              List.of(
                  "java.io..",
                  "java.nio..",
                  "javax.xml.stream..",
                  "de.siegmar.fastcsv..",
                  "org.apache.commons.compress..",
                  "org.dhatim.fastexcel..")),
          Map.entry(
              "exchange.photo",
              List.of(
                  "java.io..",
                  "java.nio..",
                  "java.security..",
                  "java.awt.image..",
                  "javax.imageio..",
                  "com.drew..",
                  "net.coobird.thumbnailator..")),
          Map.entry(
              "exchange.pdf",
              List.of(
                  "java.io..",
                  "java.nio..",
                  "java.awt..",
                  "javax.imageio..",
                  "org.w3c.dom..",
                  "com.openhtmltopdf..",
                  "org.apache.pdfbox..")),
          Map.entry(
              "exchange.ical", List.of("java.io..", "biweekly..", "com.github.mangstadt.vinnie..")),
          Map.entry(
              "exchange.vcard",
              List.of("java.io..", "java.nio..", "ezvcard..", "com.github.mangstadt.vinnie..")),
          Map.entry(
              "exchange.mail",
              List.of("java.io..", "java.nio..", "jakarta.mail..", "jakarta.activation..")),
          Map.entry("service", List.of("java.io..", "java.nio..", "java.security..")),
          Map.entry("present", List.of()),
          Map.entry(
              "ui",
              List.of(
                  "java.awt..",
                  "javax.swing..",
                  "javax.accessibility..",
                  "java.beans..",
                  "com.formdev.flatlaf..",
                  "net.miginfocom..",
                  "org.jfree..")),
          Map.entry("cli", List.of("java.io..", "java.nio..", "picocli..")));

  @ArchTest
  static void eachLayerUsesWhatItsRowAllows(JavaClasses program) {
    OUTSIDE.forEach(
        (layer, allowed) -> {
          List<String> all = new ArrayList<>(allowed);
          all.addAll(
              List.of(
                  "hullalmanac..",
                  "java.lang..",
                  "java.util..",
                  "java.math..",
                  "java.time..",
                  "java.text.."));
          noClasses()
              .that()
              .resideInAPackage("hullalmanac." + layer + "..")
              .and()
              .resideOutsideOfPackages(rowsInside(layer))
              .should()
              .dependOnClassesThat(
                  DescribedPredicate.not(
                      resideInAnyPackage(all.toArray(String[]::new))
                          .or(
                              DescribedPredicate.describe(
                                  "plain values and their arrays",
                                  c -> c.isPrimitive() || c.isArray()))))
              .because("every dependency of a layer is one more thing to know before changing it")
              .check(program);
        });
  }

  private static String[] rowsInside(String layer) {
    return OUTSIDE.keySet().stream()
        .filter(other -> other.startsWith(layer + "."))
        .map(other -> "hullalmanac." + other + "..")
        .toArray(String[]::new);
  }

  @ArchTest
  static final ArchRule coreLevelsAreOrdered =
      layeredArchitecture()
          .consideringOnlyDependenciesInLayers()
          .withOptionalLayers(true)
          .layer("record")
          .definedBy("hullalmanac.core.record..")
          .layer("work")
          .definedBy("hullalmanac.core.work..")
          .layer("sun")
          .definedBy("hullalmanac.core.sun..")
          .layer("exposure")
          .definedBy("hullalmanac.core.exposure..")
          .layer("life")
          .definedBy("hullalmanac.core.life..")
          .layer("reckon")
          .definedBy("hullalmanac.core.reckon..")
          .layer("entry")
          .definedBy("hullalmanac.core.entry..")
          .layer("report")
          .definedBy("hullalmanac.core.report..")
          .layer("finish")
          .definedBy("hullalmanac.core.finish..")
          .layer("card")
          .definedBy("hullalmanac.core.card..")
          .layer("plan")
          .definedBy("hullalmanac.core.plan..")
          .layer("find")
          .definedBy("hullalmanac.core.find..")
          .layer("price")
          .definedBy("hullalmanac.core.price..")
          .layer("takings")
          .definedBy("hullalmanac.core.takings..")
          .layer("calendar")
          .definedBy("hullalmanac.core.calendar..")
          .layer("list")
          .definedBy("hullalmanac.core.list..")
          .layer("paper")
          .definedBy("hullalmanac.core.paper..")
          .layer("supply")
          .definedBy("hullalmanac.core.supply..")
          .layer("remind")
          .definedBy("hullalmanac.core.remind..")
          .whereLayer("record")
          .mayNotAccessAnyLayer()
          .whereLayer("work")
          .mayOnlyAccessLayers("record")
          .whereLayer("sun")
          .mayOnlyAccessLayers("record")
          .whereLayer("exposure")
          .mayOnlyAccessLayers("record", "sun")
          .whereLayer("life")
          .mayOnlyAccessLayers("record", "sun", "exposure")
          .whereLayer("finish")
          .mayOnlyAccessLayers("record")
          .whereLayer("card")
          .mayOnlyAccessLayers("record", "exposure", "reckon", "finish", "report")
          .whereLayer("plan")
          .mayOnlyAccessLayers("record", "work", "finish", "report")
          .whereLayer("reckon")
          .mayOnlyAccessLayers("record")
          .whereLayer("find")
          .mayOnlyAccessLayers("record")
          .whereLayer("entry")
          .mayOnlyAccessLayers("record")
          .whereLayer("price")
          .mayOnlyAccessLayers("record")
          .whereLayer("takings")
          .mayOnlyAccessLayers("record", "price", "work", "finish")
          .whereLayer("calendar")
          .mayOnlyAccessLayers("record", "exposure", "life")
          .whereLayer("list")
          .mayOnlyAccessLayers("record", "reckon", "entry", "find", "work")
          .whereLayer("paper")
          .mayOnlyAccessLayers("record", "life", "reckon", "report", "price", "takings", "card")
          .whereLayer("supply")
          .mayOnlyAccessLayers("record", "finish", "reckon")
          .whereLayer("remind")
          .mayOnlyAccessLayers("record", "exposure", "life", "work")
          .because("the mathematics reads from the sun to the date in one direction");

  @ArchTest
  static final ArchRule sqlIsInStoreOnly =
      noClasses()
          .that()
          .resideOutsideOfPackage("hullalmanac.store..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("java.sql..", "javax.sql..", "org.sqlite..")
          .because("all SQL is in one place, where the change log cannot be passed by");

  @ArchTest
  static final ArchRule swingIsInUiOnly =
      noClasses()
          .that()
          .resideOutsideOfPackages("hullalmanac.ui..", "hullalmanac.app..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("javax.swing..", "com.formdev..", "net.miginfocom..")
          .because("screens decide nothing, and what decides must run without a screen");

  @ArchTest
  static final ArchRule presentersKnowNoToolkit =
      noClasses()
          .that()
          .resideInAPackage("hullalmanac.present..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "java.awt..", "javax.swing..", "java.sql..", "org.jfree..", "com.formdev..")
          .because("a presenter is tested without a screen");

  @ArchTest
  static final ArchRule chartsAreDrawnInOnePlace =
      noClasses()
          .that()
          .resideOutsideOfPackages("hullalmanac.chart..", "hullalmanac.ui.widget..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.jfree..")
          .because("screen and paper share one builder");

  @ArchTest
  static final ArchRule formatsAreInExchangeOnly =
      noClasses()
          .that()
          .resideOutsideOfPackage("hullalmanac.exchange..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "de.siegmar..",
              "com.drew..",
              "net.coobird..",
              "biweekly..",
              "ezvcard..",
              "com.github.mangstadt..",
              "jakarta..",
              "com.samskivert..",
              "org.dhatim..",
              "org.apache.commons.compress..",
              "com.openhtmltopdf..",
              "org.commonmark..")
          .because("bytes become values at one border");

  @ArchTest
  static final ArchRule nothingIsSentOrFetched =
      noClasses()
          .that()
          .resideOutsideOfPackage("hullalmanac.app..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("java.net..", "javax.net..", "java.rmi..")
          .orShould()
          .dependOnClassesThat()
          .haveFullyQualifiedName("jakarta.mail.Transport")
          .orShould()
          .dependOnClassesThat()
          .haveFullyQualifiedName("jakarta.mail.Store")
          .because(
              "nothing ever leaves this computer but by a person's own hand; app asks this computer its name and calls its own window");

  @ArchTest
  static final ArchRule nobodyReadsTheClockButApp =
      noClasses()
          .that()
          .resideOutsideOfPackage("hullalmanac.app..")
          .should()
          .callMethodWhere(
              DescribedPredicate.describe(
                  "now() of java.time without a Clock",
                  (JavaMethodCall call) ->
                      call.getTarget().getName().equals("now")
                          && call.getTargetOwner().getPackageName().startsWith("java.time")
                          && call.getTarget().getRawParameterTypes().isEmpty()))
          .because("a day that cannot be set cannot be tested; a Clock is passed in");

  @ArchTest
  static final ArchRule nobodyAsksTheSystemButApp =
      noClasses()
          .that()
          .resideOutsideOfPackage("hullalmanac.app..")
          .should()
          .callMethodWhere(
              DescribedPredicate.describe(
                  "System for time, environment, properties or exit",
                  (JavaMethodCall call) ->
                      call.getTargetOwner().isEquivalentTo(System.class)
                          && AMBIENT.contains(call.getTarget().getName())))
          .because("what the machine says enters in one place");

  @ArchTest
  static final ArchRule threadsAreStartedInFewPlaces =
      noClasses()
          .that()
          .resideOutsideOfPackages(
              "hullalmanac.ui.task..", "hullalmanac.solve..", "hullalmanac.app.process..")
          .should()
          .callConstructorWhere(
              DescribedPredicate.describe(
                  "of a thread",
                  (JavaConstructorCall call) -> call.getTargetOwner().isAssignableTo(Thread.class)))
          .orShould()
          .dependOnClassesThat()
          .haveFullyQualifiedName("java.util.concurrent.Executors")
          .because("one database lane and one computing lane are all there is");

  @ArchTest
  static final ArchRule standardStreamsAreForTheCommandLine =
      noClasses()
          .that()
          .resideOutsideOfPackages("hullalmanac.cli..", "hullalmanac.app..")
          .should()
          .accessField(System.class, "out")
          .orShould()
          .accessField(System.class, "err")
          .because("a library that prints cannot be used in a window");

  @ArchTest
  static final ArchRule namesSayWhatAClassIs =
      noClasses()
          .should()
          .haveNameMatching(".*(Util|Utils|Helper|Manager|Impl)")
          .because("such a name says that nobody knew what the class is");

  @ArchTest
  static final ArchRule coreTypesAreClosed =
      classes()
          .that()
          .resideInAPackage("hullalmanac.core..")
          .and(not(DescribedPredicate.describe("interfaces", JavaClass::isInterface)))
          .and(
              not(
                  DescribedPredicate.describe(
                      "enums and their constants",
                      c -> c.isEnum() || c.isAssignableTo(Enum.class))))
          .and()
          .haveSimpleNameNotContaining("package-info")
          .and(not(DescribedPredicate.describe("anonymous", JavaClass::isAnonymousClass)))
          .should()
          .haveModifier(JavaModifier.FINAL)
          .because("a value that can be extended is no value");

  @ArchTest
  static final ArchRule thereIsNoCycle =
      slices()
          .matching("hullalmanac.(**)")
          .should()
          .beFreeOfCycles()
          .because("a cycle can only be read whole");
}

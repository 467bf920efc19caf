package hullalmanac.service;

import hullalmanac.core.guide.Guide;
import hullalmanac.core.guide.GuidePage;
import hullalmanac.core.record.Pixels;
import hullalmanac.exchange.guide.GuideReader;
import hullalmanac.exchange.photo.PixelImages;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The guide that the program carries with it. Everything here touches files. */
public final class GuideService {
  private static final String RESOURCES = "/hullalmanac/guide/";

  /** The one file of which each part is a page. */
  private static final String PARTS = "guide/README.md";

  /**
   * All other files, in the order in which they are listed; {@link #PARTS} comes after the first.
   */
  private static final List<String> FILES =
      List.of(
          "guide/first-day.md",
          "guide/record.md",
          "guide/keys.md",
          "glossary.md",
          "formats/csv.md",
          "formats/lists-in.md",
          "formats/accounts.md",
          "formats/merge.md",
          "formats/calendar.md",
          "formats/contacts.md",
          "formats/mail.md",
          "formats/lives.md",
          "changes.md",
          "packaging/THIRD-PARTY.md");

  private static final String LICENCE = "LICENSE";

  private GuideService() {}

  /** All pages. */
  public static Guide read() {
    List<GuidePage> pages = new ArrayList<>();
    for (String file : FILES) {
      pages.add(GuideReader.page(file, text(file)));
      if (pages.size() == 1) {
        pages.addAll(0, GuideReader.pages(PARTS, text(PARTS)));
      }
    }
    pages.add(GuideReader.page(LICENCE, "# Licence\n\n```\n" + text(LICENCE) + "\n```\n"));
    return new Guide(pages);
  }

  /** A page made of a text. */
  public static GuidePage page(String id, String markdown) {
    return GuideReader.page(id, markdown);
  }

  /**
   * A picture of the guide.
   *
   * @param name as its page names it
   * @param dark whether it is to lie on dark ground; light where there is none such
   * @param widest it is made smaller where it is wider, in pixels
   * @return nothing when the guide has no such picture
   */
  public static Optional<Pixels> picture(String name, boolean dark, int widest) {
    Optional<Pixels> onDark =
        dark ? read(name.replace("-light-", "-dark-"), widest) : Optional.empty();
    return onDark.or(() -> read(name, widest));
  }

  private static Optional<Pixels> read(String name, int widest) {
    try (InputStream in = GuideService.class.getResourceAsStream(RESOURCES + name)) {
      return in == null ? Optional.empty() : PixelImages.read(in, widest);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String text(String file) {
    try (InputStream in = GuideService.class.getResourceAsStream(RESOURCES + file)) {
      if (in == null) {
        throw new IllegalStateException("the program does not carry " + file);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}

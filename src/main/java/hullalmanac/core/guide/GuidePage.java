package hullalmanac.core.guide;

import java.util.List;

/**
 * A page of the guide.
 *
 * @param id unlike that of any other page
 * @param file the file it stands in, or a part of which it is
 * @param html its body; links and pictures are named by their files, as {@code guide/record.md}
 * @param links where it leads: {@code file}, {@code file#anchor} or an address outside
 * @param text what one reads on it, without marks
 */
public record GuidePage(
    String id,
    String file,
    String title,
    String html,
    List<Anchor> anchors,
    List<String> links,
    List<String> pictures,
    String text) {
  public GuidePage {
    anchors = List.copyOf(anchors);
    links = List.copyOf(links);
    pictures = List.copyOf(pictures);
  }

  boolean has(String anchor) {
    return anchors.stream().anyMatch(a -> a.id().equals(anchor));
  }
}

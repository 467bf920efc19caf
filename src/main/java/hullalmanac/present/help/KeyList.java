package hullalmanac.present.help;

import java.util.List;

/**
 * All keys that do not work everywhere in the window, where they work and what they do. Those that
 * do are in {@code present.shell.WindowKey}; tests hold that both are all there is.
 */
public final class KeyList {
  private static final String SHEET = "On a sheet";
  private static final String WRITE = "In a table one writes in";
  private static final String READ = "In a table that is only read";
  private static final String RECKON = "In the Reckoner";
  private static final String LIST = "In a list";
  private static final String FINDING = "While finding";
  private static final String HELP = "In help";
  private static final String OWNER = "While a boat is shown to her owner";

  private static final String CARD = "On a job card";
  private static final List<Key> ALL =
      List.of(
          new Key(SHEET, "Ctrl+Enter", "its main button", "ctrl ENTER"),
          new Key(SHEET, "Esc", "leave it", "ESCAPE"),
          new Key(SHEET, "Enter", "take a text and go on to the next field", "ENTER"),
          new Key(SHEET, "Tab, Shift+Tab", "next field, field before", "TAB", "shift TAB"),
          new Key(
              SHEET,
              "Ctrl+V",
              "where photos are: paste files or a picture; where a list is brought in: a file or a table",
              "ctrl V"),
          new Key(WRITE, "Enter, Shift+Enter", "down, up", "ENTER", "shift ENTER"),
          new Key(WRITE, "Down, Up", "down, up, also while one writes", "DOWN", "UP"),
          new Key(WRITE, "Tab, Shift+Tab", "leave it", "TAB", "shift TAB"),
          new Key(WRITE, "Shift+arrows", "choose several cells"),
          new Key(
              WRITE,
              "Ctrl+C, Ctrl+Shift+C",
              "copy the cells chosen, all",
              "ctrl C",
              "ctrl shift C"),
          new Key(WRITE, "Ctrl+V", "paste cells, also from a spreadsheet", "ctrl V"),
          new Key(
              WRITE,
              "Ctrl+M",
              "in the steps of a visit: start to time a step, stop it; among plans: show one",
              "ctrl M"),
          new Key(WRITE, "Delete", "clear the cells chosen", "DELETE"),
          new Key(WRITE, "Ctrl+Delete", "take the row out", "ctrl DELETE"),
          new Key(READ, "Enter", "open the row", "ENTER"),
          new Key(
              READ, "Ctrl+C, Ctrl+Shift+C", "copy the rows chosen, all", "ctrl C", "ctrl shift C"),
          new Key(
              READ,
              "Ctrl+Shift+Left, Ctrl+Shift+Right",
              "move the column the cursor is in",
              "ctrl shift LEFT",
              "ctrl shift RIGHT"),
          new Key(READ, "Shift+arrows", "choose several rows"),
          new Key(READ, "Tab, Shift+Tab", "leave it", "TAB", "shift TAB"),
          new Key(
              READ,
              "Shift+F10 or Menu",
              "what can be done there, in every table and list",
              "shift F10",
              "CONTEXT_MENU"),
          new Key(RECKON, "Ctrl+C, Ctrl+Enter", "copy what came out", "ctrl C", "ctrl ENTER"),
          new Key(RECKON, "Enter, Esc", "next field, back to the list", "ENTER", "ESCAPE"),
          new Key(LIST, "Enter", "go on to the page of what is chosen", "ENTER"),
          new Key(
              LIST, "Ctrl+C, Ctrl+Shift+C", "copy what is chosen, all", "ctrl C", "ctrl shift C"),
          new Key(
              LIST,
              "Down, Esc",
              "where one types what to find: into the list, clear it",
              "DOWN",
              "ESCAPE"),
          new Key(FINDING, "Down, Up", "choose", "DOWN", "UP"),
          new Key(FINDING, "Enter", "open it", "ENTER"),
          new Key(FINDING, "Esc", "leave", "ESCAPE"),
          new Key(HELP, "Esc", "back to what you did", "ESCAPE"),
          new Key(HELP, "Alt+Left, Alt+Right", "page before, forward", "alt LEFT", "alt RIGHT"),
          new Key(HELP, "Ctrl+F", "find words in the guide", "menu F"),
          new Key(HELP, "Tab, Shift+Tab", "next link, link before", "TAB", "shift TAB"),
          new Key(HELP, "Enter", "follow the link", "ENTER"),
          new Key(
              HELP,
              "Down, Up, Page Down, Page Up, Home, End",
              "move the page",
              "DOWN",
              "UP",
              "PAGE_DOWN",
              "PAGE_UP",
              "HOME",
              "END"),
          new Key(OWNER, "Left, Right", "on two photos: move the divider", "LEFT", "RIGHT"),
          new Key(OWNER, "F11 or Esc", "leave", "F11", "ESCAPE"),
          new Key(
              OWNER,
              "Ctrl +, Ctrl −, Ctrl 0",
              "larger, smaller, usual size",
              "menu PLUS",
              "menu EQUALS",
              "menu ADD",
              "menu MINUS",
              "menu SUBTRACT",
              "menu 0"),
          new Key(OWNER, "F1", "what the guide says of it", "F1"),
          new Key(CARD, "Page Down, Page Up", "next step, step before", "PAGE_DOWN", "PAGE_UP"),
          new Key(CARD, "Ctrl+Enter", "tick the step, take the tick away", "ctrl ENTER"),
          new Key(CARD, "Ctrl+M", "begin its dwell, end it", "ctrl M"),
          new Key(CARD, "Enter", "take a time and go on; tick; press", "ENTER"),
          new Key(CARD, "Ctrl+P", "print it", "menu P"),
          new Key(CARD, "F9 or Esc", "leave", "F9", "ESCAPE"),
          new Key(
              CARD,
              "Ctrl +, Ctrl −, Ctrl 0",
              "larger, smaller, usual size",
              "menu PLUS",
              "menu EQUALS",
              "menu ADD",
              "menu MINUS",
              "menu SUBTRACT",
              "menu 0"),
          new Key(CARD, "F1", "what the guide says of it", "F1"));

  private KeyList() {}

  /**
   * Keys that belong together.
   *
   * @param where they work
   * @param keys as people write them
   * @param strokes as the toolkit writes them; none for what the toolkit itself does
   */
  public record Key(String where, String keys, String does, List<String> strokes) {
    public Key {
      strokes = List.copyOf(strokes);
    }

    Key(String where, String keys, String does, String... strokes) {
      this(where, keys, does, List.of(strokes));
    }
  }

  /** All of them, those of a place together. */
  public static List<Key> all() {
    return ALL;
  }
}

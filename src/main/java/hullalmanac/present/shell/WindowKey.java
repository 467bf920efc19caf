package hullalmanac.present.shell;

import java.util.List;

/**
 * The keys that work everywhere in the window. In a stroke, {@code menu} is Ctrl, or Command on a
 * Mac; the rest is as the toolkit writes it.
 */
public enum WindowKey {
  AHEAD("Ctrl+1", "Ahead", "menu 1"),
  BOATS("Ctrl+2", "Boats", "menu 2"),
  PEOPLE("Ctrl+3", "People", "menu 3"),
  SHELF("Ctrl+5", "Shelf", "menu 5"),
  TAKINGS("Ctrl+6", "Takings", "menu 6"),
  RECKONER("Ctrl+7", "Reckoner", "menu 7"),
  SETTINGS("Ctrl+8", "Settings", "menu 8"),
  HELP("F1", "what the guide says of where you are; Esc leaves it", "F1"),
  BACK("Alt+Left", "back", "alt LEFT"),
  FORWARD("Alt+Right", "forward", "alt RIGHT"),
  FIND("Ctrl+K", "find anything in the record", "menu K"),
  FILTER("Ctrl+F", "filter the list of boats", "menu F"),
  NEW_BOAT("Ctrl+N", "a new boat", "menu N"),
  UNDO("Ctrl+Z", "undo", "menu Z"),
  REDO("Ctrl+Shift+Z or Ctrl+Y", "redo", "menu shift Z, menu Y"),
  CATCH_UP("Ctrl+Shift+E", "the evening catch-up", "menu shift E"),
  TIMED("Ctrl+Shift+M", "the visit in which a step is being timed", "menu shift M"),
  LIST("Ctrl+Shift+I", "bring a list in", "menu shift I"),
  PAPER("Ctrl+P", "what is shown, on paper", "menu P"),
  SUPPLIES("Ctrl+Shift+S", "what is left, and whether it is enough", "menu shift S"),
  BIN("Ctrl+Shift+B", "the bin", "menu shift B"),
  AGAIN("F5", "read the record again", "F5"),
  DARK("Ctrl+Shift+D", "light or dark", "menu shift D"),
  WET_HANDS("Ctrl+Shift+W", "wet hands", "menu shift W"),
  LARGER("Ctrl +", "larger", "menu PLUS, menu EQUALS, menu ADD"),
  SMALLER("Ctrl −", "smaller", "menu MINUS, menu SUBTRACT"),
  USUAL("Ctrl 0", "usual size", "menu 0"),
  CARD("F9", "the job card of the visit that is open, or of the boat’s next planned one", "F9"),
  VISIT("Ctrl+T", "begin a visit", "menu T"),
  WASHED("Ctrl+L", "washed", "menu L"),
  CHANGE("Ctrl+E", "change what is known of her", "menu E"),
  PASSES("Ctrl+G", "the fewest passes to an agreed gloss", "menu G"),
  OWNER("F11", "show the owner", "F11");

  private final String keys;
  private final String does;
  private final String strokes;

  WindowKey(String keys, String does, String strokes) {
    this.keys = keys;
    this.does = does;
    this.strokes = strokes;
  }

  /** As people write it. */
  public String keys() {
    return keys;
  }

  public String does() {
    return does;
  }

  public List<String> strokes() {
    return List.of(strokes.split(", "));
  }

  /** Whether it does something on a boat's page alone. */
  public boolean onBoat() {
    return this == VISIT || this == WASHED || this == CHANGE || this == PASSES || this == OWNER;
  }
}

package hullalmanac.present.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;

/** The ways to begin, by what was found where the record is looked for. */
class StartPresenterTest {
  private final List<String> gone = new ArrayList<>();
  private final AtomicReference<StartState> state = new AtomicReference<>();

  private final class Noting implements StartPresenter.Beginning {
    @Override
    public void lookAround() {
      gone.add("sample");
    }

    @Override
    public void startEmpty() {
      gone.add("empty");
    }

    @Override
    public void startWithAList() {
      gone.add("list");
    }

    @Override
    public void lookAgain() {
      gone.add("again");
    }

    @Override
    public void open(String folder) {
      gone.add("open " + folder);
    }

    @Override
    public void putBack(String copy) {
      gone.add("put back " + copy);
    }
  }

  private StartPresenter start(boolean there, boolean known, Optional<String> copy) {
    StartPresenter presenter =
        new StartPresenter(
            new Noting(),
            new StartPresenter.Found("/home/nell/HullAlmanac", there, known, copy),
            Optional.empty());
    presenter.onChange(state::set);
    presenter.onGone(() -> gone.add("window gone"));
    return presenter;
  }

  private List<String> ways() {
    return state.get().ways().stream().map(StartState.Way::id).toList();
  }

  @Test
  void theFirstStartOffersTheSampleAListAnEmptyRecordAndOneOnHand() {
    StartPresenter presenter = start(false, false, Optional.empty());
    assertThat(ways()).containsExactly("sample", "list", "empty", "other");
    presenter.go("empty", Optional.empty());
    assertThat(gone).containsExactly("window gone", "empty");
    presenter.go("list", Optional.empty());
    assertThat(gone).endsWith("list");
  }

  @Test
  void aRecordThatIsNotWhereItWasIsLookedForBeforeAnythingIsMade() {
    start(false, true, Optional.empty());
    assertThat(state.get().title()).isEqualTo("Where is your record?");
    assertThat(ways()).startsWith("again", "other");
  }

  @Test
  void aDamagedRecordIsLedToItsNewestCopyAndNothingNewIsMadeOverIt() {
    StartPresenter presenter = start(true, true, Optional.of("/copies/almanac-2026-05-01.db"));
    assertThat(ways()).containsExactly("again", "other", "restore", "sample");
    presenter.go("restore", Optional.empty());
    assertThat(gone).contains("put back /copies/almanac-2026-05-01.db");
  }

  @Test
  void noFolderChosenIsNoChoice() {
    StartPresenter presenter = start(false, false, Optional.empty());
    presenter.go("other", Optional.empty());
    assertThat(gone).isEmpty();
    presenter.go("other", Optional.of("/stick"));
    assertThat(gone).containsExactly("window gone", "open /stick");
  }
}

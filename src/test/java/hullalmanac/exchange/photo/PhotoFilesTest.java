package hullalmanac.exchange.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import hullalmanac.core.record.RecordException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PhotoFilesTest {
  private static final byte[] PNG = Pictures.png(Pictures.corners(20, 10));
  private static final String NAME = PhotoFiles.sha256(PNG) + ".png";

  @TempDir Path folder;
  private Path photos;
  private Path given;

  @BeforeEach
  void giveAPhoto() throws IOException {
    photos = Files.createDirectory(folder.resolve("record")).resolve("photos");
    given = Files.write(folder.resolve("bow.png"), PNG);
  }

  private List<String> kept() throws IOException {
    if (!Files.exists(photos)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(photos)) {
      return files.map(f -> f.getFileName().toString()).toList();
    }
  }

  @Test
  void aPhotoIsKeptUnderItsContentAndTheGivenFileStays() throws Exception {
    assertThat(PhotoFiles.store(given, PhotoFormat.PNG, photos)).isEqualTo(NAME);
    assertThat(kept()).containsExactly(NAME);
    assertThat(photos.resolve(NAME)).hasBinaryContent(PNG);
    assertThat(given).hasBinaryContent(PNG);
    assertThat(PhotoFiles.missing(photos, List.of(NAME))).isEmpty();
  }

  @Test
  void theSameContentIsKeptOnceAndNeedsNoRoom() throws Exception {
    PhotoFiles.store(given, PhotoFormat.PNG, photos);
    Path again = Files.write(folder.resolve("copy of bow.png"), PNG);
    assertThat(PhotoFiles.store(again, PhotoFormat.PNG, photos, f -> 0)).isEqualTo(NAME);
    assertThat(kept()).containsExactly(NAME);
  }

  @Test
  void aDamagedFileOfThatNameIsLeftAsItIs() throws Exception {
    Files.createDirectories(photos);
    Files.writeString(photos.resolve(NAME), "something else");
    RecordException e =
        catchThrowableOfType(
            RecordException.class, () -> PhotoFiles.store(given, PhotoFormat.PNG, photos));
    assertThat(e.kind()).isEqualTo(RecordException.Kind.IN_THE_WAY);
    assertThat(e).hasMessageContaining(NAME + " is not what its name says");
    assertThat(photos.resolve(NAME)).hasContent("something else");
    assertThat(kept()).containsExactly(NAME);
  }

  @Test
  void withoutRoomForItAndTheReserveNothingIsWritten() throws Exception {
    long needed = PNG.length + PhotoFiles.RESERVE;
    RecordException e =
        catchThrowableOfType(
            RecordException.class,
            () -> PhotoFiles.store(given, PhotoFormat.PNG, photos, f -> needed - 1));
    assertThat(e.kind()).isEqualTo(RecordException.Kind.FULL);
    assertThat(e).hasMessageContaining("no room left for the photo bow.png");
    assertThat(kept()).isEmpty();
    assertThat(PhotoFiles.store(given, PhotoFormat.PNG, photos, f -> needed)).isEqualTo(NAME);
  }

  @Test
  void roomForAllIsAskedBeforeTheFirst() throws Exception {
    Path second = Files.write(folder.resolve("stern.png"), PNG);
    long needed = 2L * PNG.length + PhotoFiles.RESERVE;
    RecordException e =
        catchThrowableOfType(
            RecordException.class,
            () -> PhotoFiles.requireRoom(List.of(given, second), photos, f -> needed - 1));
    assertThat(e.kind()).isEqualTo(RecordException.Kind.FULL);
    assertThat(e).hasMessageContaining("no room left for these 2 photos");
    PhotoFiles.requireRoom(List.of(given, second), photos, f -> needed);
    assertThat(kept()).isEmpty();
  }

  @Test
  void whatAnInterruptedCopyLeftIsReplaced() throws Exception {
    Files.createDirectories(photos);
    Files.writeString(photos.resolve(NAME + ".tmp"), "half");
    PhotoFiles.store(given, PhotoFormat.PNG, photos);
    assertThat(kept()).containsExactly(NAME);
    assertThat(photos.resolve(NAME)).hasBinaryContent(PNG);
  }

  /** The room is asked between reading the content and copying it: a moment to change the file. */
  @Test
  void aFileThatChangesWhileItIsCopiedIsNotKept() throws Exception {
    PhotoFiles.Room changing =
        f -> {
          Files.writeString(given, "changed");
          return Long.MAX_VALUE;
        };
    assertThatThrownBy(() -> PhotoFiles.store(given, PhotoFormat.PNG, photos, changing))
        .isInstanceOf(RecordException.class)
        .hasMessageContaining("bow.png could not be kept")
        .hasRootCauseMessage("changed while it was copied: " + given);
    assertThat(kept()).isEmpty();
  }

  @Test
  void aPhotoThatIsGoneIsSaidToBe() throws Exception {
    Files.delete(given);
    assertThatThrownBy(() -> PhotoFiles.store(given, PhotoFormat.PNG, photos))
        .isInstanceOf(RecordException.class)
        .hasMessageContaining("bow.png could not be kept")
        .hasMessageContaining("still there");
    assertThat(kept()).isEmpty();
  }

  @Test
  void copiedPhotosAreWholeAndThoseThereStay() throws Exception {
    PhotoFiles.store(given, PhotoFormat.PNG, photos);
    Path to = folder.resolve("lists/photos");
    PhotoFiles.copy(photos, to, List.of(NAME));
    assertThat(to.resolve(NAME)).hasBinaryContent(PNG);
    Files.writeString(to.resolve(NAME), "mine");
    PhotoFiles.copy(photos, to, List.of(NAME));
    assertThat(to.resolve(NAME)).hasContent("mine");
    assertThat(PhotoFiles.missing(to, List.of(NAME)))
        .containsEntry(NAME, "the picture " + NAME + " is not what its name says");
  }
}

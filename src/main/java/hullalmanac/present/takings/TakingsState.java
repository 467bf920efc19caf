package hullalmanac.present.takings;

import hullalmanac.core.record.Estimate;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.Party;
import hullalmanac.present.sheet.Sheet;
import java.util.List;
import java.util.Optional;

/**
 * All that Takings shows.
 *
 * @param find what is looked for
 * @param list how the money stands, who owes, drafts, estimates without an answer
 * @param found what the list holds, in words
 * @param chosen whose sheet is shown
 * @param sheet that sheet
 */
public record TakingsState(
    String find, List<Item> list, String found, Subject chosen, Optional<Sheet> sheet) {
  public TakingsState {
    list = List.copyOf(list);
  }

  /** What a sheet is about. */
  public sealed interface Subject {}

  /** How the money stands as a whole. */
  public record Standing() implements Subject {}

  /** What a job costs. */
  public record Pricing() implements Subject {}

  /** Trips and expenses. */
  public record Spending() implements Subject {}

  /** Somebody who owes something, or for whom something is held. */
  public record OfParty(Id<Party> party) implements Subject {}

  /** An invoice. */
  public record OfInvoice(Id<Invoice> invoice) implements Subject {}

  /** An estimate. */
  public record OfEstimate(Id<Estimate> estimate) implements Subject {}

  /**
   * A line of the list.
   *
   * @param status what is to be known of it first
   */
  public record Item(Subject subject, String name, String status, String detail) {}
}

package hullalmanac.present.edit;

import hullalmanac.core.record.Party;
import hullalmanac.core.record.PartyKind;
import java.util.List;

/** Fields of a person or a firm. */
final class PartyFields {
  private PartyFields() {}

  static List<FieldOf<Party>> of(FieldMaker make) {
    return List.of(
        make.line("name", "Name", Party::name),
        make.choice("kind", "Person or firm", PartyKind.class, Party::kind),
        make.line("phone", "Phone", Party::phone),
        make.line("email", "E-mail", Party::email),
        make.paragraph("address", "Address", Party::address),
        make.line("language", "Language, such as en", Party::language),
        make.maybeNumber("risk", "Risk, 0.05 to 0.95; empty: as the business", Party::risk),
        make.paragraph("note", "Note", Party::note));
  }
}

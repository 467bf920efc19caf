package hullalmanac.present.edit;

import hullalmanac.core.record.Billing;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.TaxTerms;
import java.util.List;

/** Fields of how a business asks for money. */
final class BillingFields {
  private BillingFields() {}

  static List<FieldOf<Business>> of(FieldMaker make) {
    String way = make.business().units() == Business.Units.FEET ? "A mile" : "A kilometre";
    return List.of(
        make.money(
            "billing.charges.hour",
            "An hour of work is to bring",
            b -> b.billing().charges().hour()),
        make.money(
            "billing.charges.least", "The least a visit costs", b -> b.billing().charges().least()),
        make.money(
            "billing.charges.distance", way + " costs", b -> b.billing().charges().distance()),
        make.taxes("billing.taxes", "Taxes on new lines, %", b -> b.billing().taxes()),
        make.yesNo(
            "billing.terms.inclusive",
            "Prices hold their taxes",
            b -> b.billing().terms().inclusive()),
        make.choice(
            "billing.terms.at",
            "Taxes are rounded on",
            TaxTerms.At.class,
            b -> b.billing().terms().at()),
        make.choice(
            "billing.terms.rounding",
            "Halves are rounded",
            TaxTerms.Rounding.class,
            b -> b.billing().terms().rounding()),
        make.whole("billing.daysToPay", "Days to pay", b -> b.billing().daysToPay()),
        make.line(
            "billing.numbering.invoices",
            "Numbers of invoices begin with",
            b -> b.billing().numbering().invoices()),
        make.line(
            "billing.numbering.credits",
            "Numbers of credits begin with",
            b -> b.billing().numbering().credits()),
        make.choice(
            "billing.numbering.year",
            "The year in a number",
            Billing.YearForm.class,
            b -> b.billing().numbering().year()),
        make.whole(
            "billing.numbering.digits",
            "Digits of a number",
            b -> b.billing().numbering().digits()));
  }
}

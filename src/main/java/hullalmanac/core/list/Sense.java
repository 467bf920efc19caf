package hullalmanac.core.list;

import hullalmanac.core.find.Folding;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What a heading speaks of, by its words in English, German, French, Spanish, Italian and Dutch
 * (common usage, no source; from memory). Where a heading has words of several senses the first in
 * this order counts: "owner's phone" is a phone.
 */
enum Sense {
  AHEAD(
      "next, due, planned, booked, naechste, nachste, fallig, geplant, prochain, prochaine, proximo,"
          + " proxima, prossimo, prossima, volgende, gepland"),
  /** Numbers of other registers, and what has no field of its own. */
  OTHER(
      "registration, reg no, registered, ssr, sail no, sail number, segelnummer, mmsi, call sign,"
          + " insurance, price, rate, paid, invoice, draft, draught, tiefgang, tirant, tirant d eau,"
          + " calado, pescaggio, diepgang, engine, motor, weight, air draft, immatriculation,"
          + " kennzeichen, matricula, targa, birthday"),
  HULL_NUMBER(
      "hin, win, cin, hull number, hull no, hull nr, hull id, hull identification, hull serial,"
          + " rumpfnummer, numero de coque, numero de casco, numero scafo, rompnummer"),
  MAIL(
      "mail, mails, email, emails, e mail, e mails, e mail address, email address, mailadresse, courriel,"
          + " correo, correo electronico, posta elettronica"),
  PHONE(
      "phone, phones, phone no, phone number, telephone, tel, tel no, mobile, mob, cell, cell phone,"
          + " telefon, telefonnummer, handy, mobil, mobilnummer, tele, telephone portable, portable,"
          + " telefono, movil, cellulare, telefoon, telefoonnummer, mobiel, gsm, whatsapp"),
  GATE_CODE(
      "gate, gate code, door code, access code, torcode, zugangscode, code d acces, codigo,"
          + " codice cancello, toegangscode"),
  KEYS(
      "key, keys, where keys, schlussel, cle, cles, llave, llaves, chiave, chiavi, sleutel, sleutels"),
  ADDRESS(
      "address, home address, street, town, city, postcode, post code, zip, zip code, country,"
          + " adresse, strasse, ort, plz, wohnort, land, rue, ville, code postal, pays, direccion,"
          + " calle, ciudad, codigo postal, indirizzo, via, citta, cap, adres, straat, plaats, postcode"),
  LENGTH(
      "length, loa, l o a, length overall, length over all, boat length, size, feet, ft, long, lange,"
          + " laenge, lua, bootslange, schiffslange, longueur, eslora, lunghezza, lengte"),
  BEAM("beam, width, breite, largeur, bau, maitre bau, manga, larghezza, baglio, breedte"),
  BUILT(
      "built, year, year built, build year, model year, age, baujahr, bj, annee, annee de construction,"
          + " ano, anno, anno di costruzione, bouwjaar"),
  COLOUR("colour, color, hull colour, hull color, farbe, rumpffarbe, couleur, colore, kleur"),
  MATERIAL(
      "material, hull material, construction, made of, rumpfmaterial, materiau, matiere, materiale,"
          + " materiaal, finish"),
  TYPE("type, boat type, kind, rig, typ, bootstyp, art, genre, tipo, soort"),
  MAKE(
      "make, model, make model, builder, built by, manufacturer, class, design, brand, werft, hersteller,"
          + " modell, marke, chantier, constructeur, modele, marque, astillero, fabricante, modelo,"
          + " marca, cantiere, costruttore, modello, werf, bouwer, merk"),
  LAST_VISIT(
      "last, date, last visit, last service, last serviced, last done, last job, last clean, last cleaned,"
          + " last wash, last wax, last waxed, last polish, last polished, last coat, last coated,"
          + " serviced, cleaned, polished, waxed, coated, done, done on, visit, letzte, letzter, letztes,"
          + " datum, letzte pflege, letzte politur, zuletzt, dernier, derniere, dernier entretien,"
          + " dernier passage, ultimo, ultima, ultimo servicio, ultima visita, ultimo intervento,"
          + " fecha, data, laatste, laatst, laatste beurt, laatste onderhoud"),
  PRODUCT(
      "product, products, product used, wax, sealant, coating, ceramic, protection, produkt, wachs,"
          + " versiegelung, produit, cire, producto, cera, prodotto, middel"),
  BERTH(
      "berth, berth no, berth number, slip, slip no, mooring, pontoon, dock, space, stand, stall, liegeplatz,"
          + " platz, box, steg, emplacement, place, ponton, poste, amarre, atraque, plaza, pantalan,"
          + " posto, posto barca, ormeggio, pontile, ligplaats, steiger, plek"),
  HARBOUR(
      "harbour, harbor, marina, port, home port, haven, yard, club, location, where, lies, lies at, kept,"
          + " kept at, based, hafen, heimathafen, yachthafen, port d attache, puerto, porto, jachthaven"),
  NOTE(
      "note, notes, remark, remarks, comment, comments, info, misc, other, details, job, work, to do,"
          + " bemerkung, bemerkungen, notiz, notizen, anmerkung, anmerkungen, sonstiges, remarque,"
          + " remarques, commentaire, commentaires, observaciones, notas, nota, osservazioni, annotazioni,"
          + " opmerking, opmerkingen, bijzonderheden"),
  FIRM(
      "firm, company, business, organisation, organization, firma, unternehmen, societe, entreprise,"
          + " empresa, ditta, societa, azienda, bedrijf"),
  FIRST_NAME(
      "first name, firstname, forename, given name, vorname, prenom, nombre de pila, voornaam"),
  LAST_NAME(
      "last name, lastname, surname, family name, nachname, familienname, zuname, nom de famille,"
          + " apellido, apellidos, cognome, achternaam"),
  OWNER(
      "owner, owners, owner s, customer, customers, client, clients, contact, contact name, contact person,"
          + " skipper, who, eigner, eigentumer, besitzer, kunde, kunden, kontakt, proprietaire,"
          + " propietario, propietaria, cliente, dueno, contacto, proprietario, armatore, contatto,"
          + " eigenaar, klant"),
  BOAT(
      "boat, boats, boat s, boat name, vessel, vessels, yacht, yachts, ship, craft, boot, boote, schiff,"
          + " bootsname, schiffsname, yachtname, bateau, bateaux, navire, voilier, barco, barcos,"
          + " embarcacion, velero, barca, barche, imbarcazione, schip, jacht, bootnaam, scheepsnaam"),
  NAME("name, names, nom, noms, nombre, nome, nomi, naam, namen"),
  COUNT(
      "no, nr, n, num, number, nummer, numero, row, lfd, lfd nr, line, id, item, pos, volgnummer");

  private static final Map<Sense, List<List<String>>> PHRASES = new EnumMap<>(Sense.class);

  static {
    for (Sense sense : values()) {
      PHRASES.put(
          sense,
          Arrays.stream(sense.phrases.split(","))
              .map(Folding::words)
              .filter(w -> !w.isEmpty())
              .toList());
    }
  }

  private final String phrases;

  Sense(String phrases) {
    this.phrases = phrases;
  }

  /** All senses of which a heading has words. */
  static Set<Sense> all(String heading) {
    List<String> words = withoutUnit(Folding.words(heading));
    Set<Sense> senses = EnumSet.noneOf(Sense.class);
    for (Sense sense : values()) {
      if (PHRASES.get(sense).stream().anyMatch(p -> holds(words, p))) {
        senses.add(sense);
      }
    }
    return senses;
  }

  /** The sense that counts. */
  static Optional<Sense> of(String heading) {
    Set<Sense> senses = all(heading);
    if (senses.contains(FIRST_NAME) || senses.contains(LAST_NAME)) {
      return Optional.of(senses.contains(FIRST_NAME) ? FIRST_NAME : LAST_NAME);
    }
    return senses.stream().min(Comparator.naturalOrder());
  }

  /** Whether a text is a heading and nothing else: each of its words belongs to some phrase. */
  static boolean isHeading(String text) {
    List<String> words = withoutUnit(Folding.words(text));
    if (words.isEmpty() || words.size() > MOST_WORDS) {
      return false;
    }
    return all(text).stream()
        .flatMap(s -> PHRASES.get(s).stream())
        .anyMatch(p -> holds(words, p) && p.size() * 2 >= words.size());
  }

  private static final int MOST_WORDS = 6;

  private static final Set<String> UNITS =
      Set.of("m", "ft", "feet", "metres", "meters", "metre", "mtr", "cm", "mm", "in");

  /** Words without a unit after them: "length ft" is a length, "ft" alone stays. */
  private static List<String> withoutUnit(List<String> words) {
    int end = words.size();
    return end > 1 && UNITS.contains(words.get(end - 1)) ? words.subList(0, end - 1) : words;
  }

  private static boolean holds(List<String> words, List<String> phrase) {
    for (int i = 0; i + phrase.size() <= words.size(); i++) {
      if (words.subList(i, i + phrase.size()).equals(phrase)) {
        return true;
      }
    }
    return false;
  }
}

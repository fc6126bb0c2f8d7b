"""Invented shops, people, places and carriers. No street, number or address belongs to anybody."""

CARRIERS = ["Brightloop", "Norvane Parcel", "Tamsel Post", "Quillport", "Hafenlicht Paket", "Rundweg", "Bergpost Alm", "Zwaluw Pakket",
            "Colivane", "Mirabel Relais", "Dunmere Mail", "Ostreka", "Kestrelway", "Laurier Colis"]
SHOPS = {
    "us": ["Fernhollow Ceramics", "1420 Example Mill Rd, Unit 6", "Duluth, MN 55802", "555-0142"],
    "us2": ["Two Pines Letterpress", "88 Sample Orchard Ln", "Asheville, NC 28801", "555-0119"],
    "ca": ["Atelier Brindille", "312 rue de l'Exemple, bur. 4", "Sherbrooke QC J1H 0A1", "555-0167"],
    "de": ["Knopf und Faden Manufaktur", "Musterhof 7a", "99084 Erfurt", "www.knopfundfaden.example"],
    "de2": ["Wachswerk Seiler", "Beispielgasse 19", "79098 Freiburg", "wachswerk.example"],
    "at": ["Tonwerkstatt Hirzl", "Musterzeile 3/2", "8010 Graz", "hirzl.example"],
    "ch": ["Filzatelier Bärlocher", "Beispielweg 22", "3011 Bern", "filzatelier.example"],
    "nl": ["Atelier Rietveen", "Voorbeeldkade 51", "3511 AA Utrecht", "rietveen.example"],
    "fr": ["La Petite Verrerie", "14 impasse de l'Exemple", "44000 NANTES", "petiteverrerie.example"],
    "gb": ["Thistle and Loom", "Unit 3, Example Yard", "SHEFFIELD S1 9ZZ", "thistleloom.example"],
}
PEOPLE = {
    "us": [["Marlene Okafor", "2207 Sample Creek Dr Apt 14", "Boise ID 83702-0001"], ["Theo Vandermeer", "PO Box 555 Example Station", "Tulsa OK 74103-9999"],
           ["DESTINY R ALVARADO", "9 TEST POND CIR", "CONCORD NH 03301-0000"], ["Jun Castellano", "Suite 900, 41 Placeholder Ave", "Sacramento CA 95814"],
           ["WILHELMINA STROUD", "16008 SPECIMEN FALLS PKWY", "LITTLE ROCK AR 72201-5550"], ["Priya Lindqvist", "77 Mockingbird Sample Way", "Madison WI 53703"]],
    "ca": [["Noémie Thibault-Roy", "1805 av. du Modèle, app. 12", "QUÉBEC QC  G1R 0B2"], ["Arjun MacPhail", "44 Specimen Crescent", "HALIFAX NS  B3H 0Z9"],
           ["Ella Kowalchuk", "RR 2 Site 5 Comp 9", "SASKATOON SK  S7K 0X0"]],
    "de": [["Henrike Osterloh", "Beispielstr. 118", "33602 Bielefeld"], ["Dr. Konrad Aumüller", "Am Musterberg 4", "87435 Kempten (Allgäu)"],
           ["Fa. Gebr. Tiedemann", "z. Hd. Frau Jasper", "Probeweg 31-33", "24103 Kiel"], ["Ayşe Grünwald", "c/o Lehmkuhl", "Musterplatz 9", "04109 Leipzig"],
           ["Benedikt Schöffel", "Vorlagenring 202 b", "66111 Saarbrücken"]],
    "at": [["Magdalena Prohaska", "Beispielgasse 12/3/17", "1070 Wien"], ["Johann Unterrainer", "Musterdorf 48", "6370 Kitzbühel"]],
    "ch": [["Reto Ammann", "Musterrain 6", "9000 St. Gallen"], ["Corinne Favre", "Chemin de l'Exemple 11", "1003 Lausanne"]],
    "nl": [["Sjoerd Terpstra", "Voorbeeldlaan 208-II", "9711 AB  GRONINGEN"], ["Mw. F. el Idrissi", "Proefstraat 7", "5611 ZZ  EINDHOVEN"],
           ["Lotte van der Zwaag", "Monsterweg 33 bis", "2312 XX  LEIDEN"]],
    "fr": [["Mme Solène Le Guennec", "Résidence du Modèle, Bât. C", "27 rue de l'Exemple", "29200 BREST"], ["M. Aurélien Chabrol", "3 chemin Fictif", "63000 CLERMONT-FERRAND"],
           ["Inès Bouhadi", "118 bd du Spécimen", "13001 MARSEILLE"]],
    "gb": [["Mr Callum Aldridge", "Flat 2b, 16 Sample Terrace", "NORWICH", "NR1 9ZZ"], ["Mrs Bronwen Pugh", "Example Cottage, Specimen Lane", "LLANDRINDOD WELLS", "LD1 9ZZ"],
           ["Imogen Achebe", "81 Placeholder Road", "BELFAST", "BT1 9ZZ"]],
}
NOT = {
    "en": "SAMPLE - NOT VALID FOR CARRIAGE",
    "de": "MUSTER - NICHT ZUR BEFÖRDERUNG GÜLTIG",
    "fr": "SPÉCIMEN - NON VALABLE POUR LE TRANSPORT",
    "nl": "VOORBEELD - NIET GELDIG VOOR VERZENDING",
}

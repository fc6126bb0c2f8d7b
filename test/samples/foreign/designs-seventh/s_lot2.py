"""The second lot: python3 s_lot2.py FOLDER [NAME …]"""
import sys

from s_build import Page, Part, document, paper
from s_ink import MM, Ink
from s_labels2 import balkan, bilingual, greek, half_sheet, indonesian, plain_post, romanian, spanish_return, square_cn, thai, warehouse
from s_lot1 import lay, put
from s_office import Office
from s_papers2 import cn_form, post_help, receipt_ca, return_letter, slip_small, third_cuts
from s_raw import Raw
from s_writers import Ghostscript, Pixels, Tex

A4 = (595.28, 841.89)
LETTER = (612, 792)


def s14(folder):
    orders = [
        {"letter": "K", "from": ["FERNHILL FULFILMENT DOCK 4", "for Two Larks Pottery", "118 EXAMPLE PKWY", "RENO NV 89501"], "date": "03 NOV", "lb": "2 LB", "svc": "HARVO", "to": ["Imogen Sampleton", "4410 Specimen Ave Apt 12B", "Duluth MN 55802"], "zip": "[420]55802", "ziptext": "(420) 55802", "zone": "06-D", "track": "92110098765500011842", "spaced": "9211 0098 7655 0001 1842", "dm": "OBL92110098765500011842D06", "ref": "44-118302", "bin": "SHELF A17"},
        {"letter": "M", "from": ["FERNHILL FULFILMENT DOCK 4", "for Two Larks Pottery", "118 EXAMPLE PKWY", "RENO NV 89501"], "date": "03 NOV", "lb": "11 LB", "svc": "DEEM", "to": ["Rodrigo Testerman c/o Pier Gallery", "Unit 7, 9001 Old Example Highway", "St. Augustine FL 32084"], "zip": "[420]32084", "ziptext": "(420) 32084", "zone": "11-A", "track": "92110098765500011859", "spaced": "9211 0098 7655 0001 1859", "dm": "OBL92110098765500011859A11", "ref": "44-118311", "bin": "SHELF C02"},
        {"letter": "K", "from": ["FERNHILL FULFILMENT DOCK 4", "for Two Larks Pottery", "118 EXAMPLE PKWY", "RENO NV 89501"], "date": "03 NOV", "lb": "1 LB", "svc": "HARVO", "to": ["Bea Q. Mockford", "PO Box 555", "Taos NM 87571"], "zip": "[420]87571", "ziptext": "(420) 87571", "zone": "03-F", "track": "92110098765500011866", "spaced": "9211 0098 7655 0001 1866", "dm": "OBL92110098765500011866F03", "ref": "44-118327", "bin": "SHELF A17"},
    ]
    pages = []
    for i, o in enumerate(orders):
        pages.append(Page("label", 288, 432, [Part("label", put(warehouse, o, 0, 0), "page")]))
        pages.append(Page("packing-slip", 288, 432, [Part("slip", lambda o=o, i=i: slip_small(o, i))]))
    document(folder, "s14-same-paper-1", "hand-written", lambda: Raw(words="outlines"), pages)


def s15(folder):
    orders = [
        {"from": ["Birchbark Books", "77 Sample St W", "Guelph ON  N1H 5B7"], "svc": "4", "to": ["Maëlle Gabarit", "1180 rue de l'Exemple, app. 4", "Trois-Rivières QC  G9A 5B2"], "maxi": "ZLQ G9A5B2 124 004 ZQ7100442817", "post": "G9A 5B2", "kg": "0.9 kg", "pc": "1 of/de 1", "track": "ZQ7100442817"},
        {"from": ["Birchbark Books", "77 Sample St W", "Guelph ON  N1H 5B7"], "svc": "2", "to": ["Harold Trialson", "Site 4 Comp 12 RR 2", "Specimen Lake SK  S0J 0B0"], "maxi": "ZLQ S0J0B0 124 002 ZQ7100442825", "post": "S0J 0B0", "kg": "3.4 kg", "pc": "2 of/de 2", "track": "ZQ7100442825"},
        {"from": ["Birchbark Books", "77 Sample St W", "Guelph ON  N1H 5B7"], "svc": "4", "to": ["Musée du Modèle", "Service des achats", "9, place Témoin", "Moncton NB  E1C 5B9"], "maxi": "ZLQ E1C5B9 124 004 ZQ7100442833", "post": "E1C 5B9", "kg": "1.1 kg", "pc": "1 of/de 1", "track": "ZQ7100442833"},
    ]
    pages = [Page("label", *LETTER, [lay(receipt_ca, o), Part("label", put(bilingual, o, 290, 370, 90, 396, 280), "frame", 270)]) for o in orders]
    document(folder, "s15-two-tongues-1", "ghostscript", Ghostscript, pages)


def s16(folder):
    who = [
        (["Μαρίκα Δοκιμάκη", "Οδός Υποδείγματος 14, 2ος όροφος", "11526 Αθήνα"], "ΑΘ-12"),
        (["Παντοπωλείο «Το Παράδειγμα»", "υπόψη κ. Σταμάτη", "Παραλιακή 7, 85100 Ρόδος"], "ΡΟΔ"),
        (["Ευτέρπη Δείγματος", "Χωριό Πρότυπο, 45500 Ιωάννινα"], "ΙΩ-3"),
        (["Λ. Σχεδίου", "Λεωφ. Δοκιμής 118", "54622 Θεσσαλονίκη"], "ΘΕ-7"),
        (["Ξένια Μακρυμίχαλου-Υποδειγματίδου", "Πλατεία Αναφοράς 2", "71202 Ηράκλειο Κρήτης"], "ΗΡ-1"),
    ]
    orders = [{"date": "03/11", "from": ["Πηλός & Κερί", "Δοκιμίου 3", "38221 Βόλος", "τηλ. 555-0126"], "to": to, "branch": z, "n": f"1/{1 + i % 2}", "track": f"GTM40118822{31 + 8 * i}", "cells": [("Βάρος", f"{1 + i},2 kg"), ("Αντικαταβολή", ("–", "34,50 €")[i % 2]), ("Χρέωση", "αποστολέα"), ("Κόμιστρα", "4,10 €"), ("Σημείωση", ("", "προσοχή")[i % 2])]} for i, (to, z) in enumerate(who)]
    pages = [Page("label", *A4, [lay(third_cuts)] + [Part("label", put(greek, o, 20, 18 + 280.6 * i), "ink") for i, o in enumerate(some)]) for some in (orders[:3], orders[3:])]
    document(folder, "s16-three-strips-1", "xetex", lambda: Tex("xelatex"), pages)


def s17(folder):
    orders = [
        {"route": "C2-19", "track": "WPR66100427", "to": ["คุณสมหญิง ตัวอย่าง", "99/5 ซอยทดลอง ถนนสมมติ", "แขวงบางรัก กรุงเทพฯ"], "from": ["ร้านด้ายแดง โทร 555-0177", "เชียงใหม่ 50000"], "zip": "10500", "cod": "ไม่เก็บเงิน", "kg": "0.5 กก.", "what": "กระเป๋าผ้า", "order": "A-3301"},
        {"route": "S4-02", "track": "WPR66100435", "to": ["บ้านเลขที่ 12 หมู่ 3", "คุณประเสริฐ ทดสอบ", "ตำบลตัวอย่าง อำเภอเมือง ภูเก็ต"], "from": ["ร้านด้ายแดง โทร 555-0177", "เชียงใหม่ 50000"], "zip": "83000", "cod": "เก็บเงิน 450", "kg": "2 กก.", "what": "เสื่อ", "order": "A-3302"},
    ]
    document(folder, "s17-thai-pixels-1", "img2pdf", lambda: Pixels(203, "1"), [Page("label", 100 * MM, 150 * MM, [Part("label", put(thai, o, 0, 0), "frame")]) for o in orders])


def s18(folder):
    orders = [
        {"to": ["Taller del Azafrán", "Polígono Muestra, nave 14", "45510 Fuensalida (Toledo)"], "from": ["Remedios Ensayo Prieto", "C/ del Modelo 3, 2.º B", "33009 Oviedo"], "track": "CSP5500918273", "code": "TO 4", "rma": "D-2231"},
        {"to": ["Taller del Azafrán", "Polígono Muestra, nave 14", "45510 Fuensalida (Toledo)"], "from": ["Íñigo Probeta", "Camino Ejemplo s/n", "35010 Las Palmas"], "track": "CSP5500918281", "code": "TO 4", "rma": "D-2240"},
        {"to": ["Cerámica La Muestra", "A/A devoluciones", "Calle Ficticia 40", "46940 Manises"], "from": ["Consuelo Tipo", "Plaza Patrón 1", "10003 Cáceres"], "track": "CSP5500918299", "code": "VA 2", "rma": "D-2251"},
    ]
    pages = [Page("return-label", *A4, [lay(return_letter, o), Part("return-label", put(spanish_return, o, 86, 520), "ink")]) for o in orders]
    document(folder, "s18-letter-and-return-1", "libreoffice", Office, pages)


def s19(folder):
    orders = [
        {"track": "NDQ118400772RS", "to": ["Željka Primerić", "Ulica Uzorka 15", "21000 Novi Sad", "Srbija"], "from": ["Radionica Šljiva", "Probna 4, 71000 Sarajevo", "555-0119"], "country": "SRB", "kg": "1,8 kg", "opt": "0", "dm": "NDQ|118400772|SRB|1800|0", "value": "32 EUR", "what": "džem, 3 kom."},
        {"track": "NDQ118400786SI", "to": ["Jernej Vzorčnik", "Pri Primeru 7", "4260 Bled", "Slovenija"], "from": ["Radionica Šljiva", "Probna 4, 71000 Sarajevo", "555-0119"], "country": "SVN", "kg": "0,6 kg", "opt": "2", "dm": "NDQ|118400786|SVN|600|2", "value": "12 EUR", "what": "kutija"},
        {"track": "NDQ118400790CH", "to": ["Beatrix Muster-Überall", "Musterstrasse 118", "8400 Winterthur", "Švicarska"], "from": ["Radionica Šljiva", "Probna 4, 71000 Sarajevo", "555-0119"], "country": "CHE", "kg": "4,0 kg", "opt": "1", "dm": "NDQ|118400790|CHE|4000|1", "value": "88 EUR", "what": "tanjir, 4 kom."},
    ]
    pages = [Page("label", 841.89, 595.28, [Part("label", put(balkan, o, 500, 60)), lay(cn_form, o)], rotate=270, offset=(-20, 30)) for o in orders]
    document(folder, "s19-form-beside-1", "hand-written", lambda: Raw(words="embedded", forms=True), pages)


def s21(folder):
    orders = [
        {"track": "EKW8800127734", "svc": "RM", "sort": ["SBY", "SUB-10412", "03"], "name": "Ratna Contoh", "to": ["Jl. Percobaan No. 7, RT 03/RW 05, Kel. Misal", "Kec. Umpama, Surabaya, Jawa Timur 60111", "Telp. 555-0114"], "from": ["Toko Rotan Kecil", "Jl. Ibarat 2, Yogyakarta 55111"], "cells": [("Berat", "700 gr"), ("COD", "Rp 0"), ("Kirim", "03-11"), ("Batas", "05-11")], "order": "2211037KQX", "note": "tolong bungkus rapi", "goods": ["1  Keranjang rotan kecil     KR-01   2", "2  Tali goni 5 m              TG-05   1"]},
        {"track": "EKW8800127742", "svc": "HM", "sort": ["DPS", "DPS-20118", "11"], "name": "I Made Umpama", "to": ["Br. Contoh, Jl. Raya Ilustrasi Gg. Melati 4", "Ubud, Gianyar, Bali 80571"], "from": ["Toko Rotan Kecil", "Jl. Ibarat 2, Yogyakarta 55111"], "cells": [("Berat", "3.200 gr"), ("COD", "Rp 210.000"), ("Kirim", "03-11"), ("Batas", "07-11")], "order": "2211037MRA", "note": "-", "goods": ["1  Kursi anak rotan           KA-02   1"]},
        {"track": "EKW8800127759", "svc": "RM", "sort": ["JKT", "CGK-30007", "08"], "name": "PT Misalnya Jaya (Bpk. Uji)", "to": ["Gedung Sampel Lt. 12, Jl. Jend. Teladan Kav. 1", "Jakarta Selatan 12190"], "from": ["Toko Rotan Kecil", "Jl. Ibarat 2, Yogyakarta 55111"], "cells": [("Berat", "1.000 gr"), ("COD", "Rp 0"), ("Kirim", "03-11"), ("Batas", "04-11")], "order": "2211037PZZ", "note": "kirim jam kantor", "goods": ["1  Nampan rotan               NR-03   6", "2  Kartu ucapan               KU-01   6", "3  Pita                       PT-09   6"]},
    ]
    pages = [Page("label", 297.64, 419.53, [Part("label", put(indonesian, o, 4, 5))]) for o in orders]
    document(folder, "s21-crowded-a6-1", "hand-written", lambda: Raw(words="embedded", strips=9), pages)


def s22(folder):
    make = lambda ch, to, cc, n, items: {"ch": ch, "from": ["Bldg 4, 118 Sample Rd, Bantian", "Shenzhen 518129"], "to": to, "cc": cc, "track": f"YQG77004418{n}CN", "list": f"PH-0311-{n}", "items": items, "bin": f"C{n}-08"}
    orders = [
        make("G2", ["Philippa Exampleton", "14 Specimen Close", "Leeds LS1 5AB", "Great Britain"], "GB", 21, "挂饰 ×3, 贴纸 ×1"),
        make("A1", ["Lachlan Trial", "Unit 5, 40 Demo Parade", "Cairns QLD 4870", "Australia"], "AU", 38, "杯垫 ×2"),
        make("G2", ["Ivana Ukázková", "Příkladná 118/4", "602 00 Brno", "Czechia"], "CZ", 45, "耳环 ×1, 礼盒 ×1"),
    ]
    document(folder, "s22-square-paper-1", "img2pdf", lambda: Pixels(203, "1"), [Page("label", 283.46, 283.46, [Part("label", put(square_cn, o, 0, 0), "frame")]) for o in orders])


def s23(folder):
    make = lambda i, to, hub, note: {"track": f"4471180{i}2210", "from": ["Atelierul Salcia", "Str. Exemplului 8", "500030 Brașov", "555-0137"], "to": to, "hub": hub, "note": note, "cells": [[("Colete", "1"), ("Greutate", f"{i} kg"), ("Ramburs", f"{i * 45} lei"), ("Plata", "expeditor")], [("Deschidere", "da"), ("Sâmbătă", "nu"), ("Asigurare", "0"), ("Data", "03.11")]]}
    orders = [
        make(2, ["Smaranda Pildă", "Bd. Model nr. 14, bl. C3, ap. 20", "sector 4, București"], "B4 17", "sunați înainte"),
        make(5, ["SC Probă Impex SRL", "dlui Ștefan Încercare", "Calea Mostrei 3", "400001 Cluj-Napoca"], "CJ 02", "-"),
        make(7, ["Țurcanu Modest", "sat Exemplu, com. Model", "jud. Tulcea 827000"], "TL 01", "la poartă"),
    ]
    scan = lambda i: (150, (-1.9, 0.4, 2.6)[i], paper(120 + i, noise=3, shade=14, folds=(0.34, 0.67), tone=238), 32)
    pages = [Page("label", 419.53, 595.28, [Part("label", put(romanian, o, 24, 40 + 90 * i))]) for i, o in enumerate(orders)]
    document(folder, "s23-folded-scan-1", "scan-jpeg", lambda: Raw(words="embedded"), pages, scan)


def s24(folder):
    make = lambda n, to: {"from": ["Cortiça & Linho · Rua do Ensaio 5 · 7000-650 Évora"], "to": to, "mark": "R", "track": f"RX40118{n}6PT"}
    orders = [
        make("8821", ["Deolinda Modelo", "Rua da Amostra 18, 3.º Esq.", "4000-055 Porto"]),
        make("8835", ["Junta de Freguesia do Exemplo", "Largo da Prova", "9500-000 Ponta Delgada", "Açores"]),
        make("8849", ["Sr. Amadeu Padrão", "Apartado 555", "6000-001 Castelo Branco"]),
    ]
    pages = [Page("label", *A4, [Part("label", put(plain_post, o, 60, 70), "ink"), lay(post_help)]) for o in orders]
    document(folder, "s24-bare-address-1", "hand-written", lambda: Raw(pack=False), pages)


def s25(folder):
    make = lambda mark, to, n, lb, usd, sort: {"mark": mark, "usd": usd, "lb": lb, "from": ["Salt Fork Soap Co.", "2200 Sample Rd", "Enid OK 73701"], "to": to, "track": f"BVT{n}", "spaced": f"BVT {n[:4]} {n[4:]}", "sort": sort}
    pairs = [
        (make("B", ["Odalys Pattern", "17 Mock Orange Ln", "Eureka Springs AR 72632"], "44018823", "1 lb 4 oz", "6.15", "R7"), make("B", ["Gus Placeholder", "80 Demo Blvd Ste 300", "Yuma AZ 85364"], "44018831", "9 oz", "4.90", "W2")),
        (make("F", ["The Example Inn", "Attn: Front Desk", "1 Harbor Specimen Way", "Bar Harbor ME 04609"], "44018849", "6 lb", "12.40", "E1"), make("B", ["Ines Proof", "3333 Trial Ct #9", "Boulder CO 80301"], "44018857", "13 oz", "5.20", "R4")),
    ]
    pages = [Page("label", *LETTER, [Part("label", put(half_sheet, a, 86, 52)), Part("label", put(half_sheet, b, 86, 448))]) for a, b in pairs]
    scan = lambda i: (200, (0.9, -1.7)[i], paper(140 + i, noise=12, blur=0.5, edge=0.01), "g4")
    document(folder, "s25-two-scanned-1", "scan-g4", lambda: Raw(), pages, scan)


if __name__ == "__main__":
    wanted = sys.argv[2:]
    for key, make in list(globals().items()):
        if len(key) == 3 and key[0] == "s" and key[1:].isdigit() and (not wanted or key in wanted):
            make(sys.argv[1])
            print(key)

"""The third lot: python3 s_lot3.py FOLDER [NAME …]"""
import sys

from s_build import Page, Part, document, paper
from s_ink import MM, Ink
from s_labels3 import chile, corner, czech_back, island, kyiv, magyar, viet
from s_lot1 import lay, put
from s_office import Office
from s_raw import Raw
from s_writers import Ghostscript, Pixels, Tex

A4 = (595.28, 841.89)
LETTER = (612, 792)


def rows(x, y, lines, size=11, f="H", lead=None, head=None):
    k = Ink()
    if head:
        k.text(x, y - 26, head, size * 1.6, f + "B")
    k.lines(x, y, lines, size, f, lead or size * 1.45)
    return k


def s27(folder):
    who = [(["Mrs Ngozi Example", "14 Specimen Close, off Sample Road", "Enugu", "Tel 555-0112"], "ENU 3"), (["Barr. Tunde Mockson", "Trial Chambers, 2nd Floor", "Ibadan, Oyo State"], "IBD 1"), (["Kwabena Sample-Test", "P.O. Box 555", "Kumasi, Ghana"], "KMS 9"), (["Hajiya Amina Pattern", "No. 8 Model Estate", "Kano"], "KAN 2")]
    orders = [{"svc": ("TV 2", "TV 5")[i % 2], "to": to, "from": ["Adire & Thread, 3 Example Street, Lagos", "555-0166"], "depot": z, "facts": [f"Pieces 1 of {1 + i % 2}", f"Weight {1.5 + i} kg", "3 November"], "track": f"TVH118{4470 + 11 * i}", "note": "Ring before delivery. Terms at tunvoro.example"} for i, (to, z) in enumerate(who)]
    pages = [Page("label", A4[1], A4[0], [Part("label", put(corner, o, 20 + 410 * j, 60), "ink") for j, o in enumerate(pair)]) for pair in (orders[:2], orders[2:])]
    document(folder, "s27-corner-only-1", "ghostscript", Ghostscript, pages)


def s28(folder):
    orders = [
        {"line": "HN-04", "track": "CHM660012841", "to": ["Nguyễn Thị Ví Dụ", "Số 12, ngõ 5, phố Mẫu", "phường Thử Nghiệm, Hà Nội", "ĐT 555-0140"], "from": ["Gốm Nhà Cam, 7 đường Giả Định, Đà Nẵng", "555-0163"], "hub": "HAN-B7", "cod": "0 đ", "kg": "1,2 kg", "order": "MX-3391", "what": "bát gốm, 2 cái"},
        {"line": "CT-11", "track": "CHM660012858", "to": ["Cửa hàng Thử, anh Khuôn", "ấp Ví Dụ, xã Mẫu, Cần Thơ"], "from": ["Gốm Nhà Cam, 7 đường Giả Định, Đà Nẵng"], "hub": "VCA-02", "cod": "240.000 đ", "kg": "3 kg", "order": "MX-3392", "what": "bình hoa"},
        {"line": "HP-02", "track": "CHM660012865", "to": ["Lê Mẫu", "Tầng 9 tòa nhà Thử, 118 đường Ví Dụ", "quận Giả Định, Hải Phòng"], "from": ["Gốm Nhà Cam, 7 đường Giả Định, Đà Nẵng"], "hub": "HPH-A1", "cod": "0 đ", "kg": "0,6 kg", "order": "MX-3398", "what": "chén trà"},
    ]
    document(folder, "s28-dark-bands-1", "hand-written", lambda: Raw(words="embedded", forms=True), [Page("label", 288, 432, [Part("label", put(viet, o, 0, 0), "page")]) for o in orders])


def s29(folder):
    orders = [
        {"to": ["Millaray Ejemplo Tapia", "Pasaje Muestra 118, depto. 42", "Ñuñoa, Santiago", "Fono 555-0130"], "from": ["Tejidos Puelche, Camino Ensayo s/n", "Castro, Chiloé"], "ref": "Pedido MUX-9917", "kg": "0,8 kg", "track": "QMB44180027", "zone": "S4"},
        {"to": ["Ferretería El Supuesto Ltda.", "Att. don Eladio", "Av. Prueba 2201, local 3", "Antofagasta"], "from": ["Tejidos Puelche, Camino Ensayo s/n", "Castro, Chiloé"], "ref": "Pedido MUX-9921", "kg": "5,4 kg", "track": "QMB44180035", "zone": "N2"},
    ]
    help_ = lambda: rows(60, 110, ["Recorte la guía de la mitad inferior y péguela en la caja.", "Entregue en cualquier sucursal antes de las 18 horas.", "Guarde esta mitad: no acompaña al paquete.", "", "Consultas: 555-0111, quimbarro.example"], 12, "L", head="Su envío está pagado")
    document(folder, "s29-ladder-half-1", "luatex", lambda: Tex("lualatex"), [Page("label", *LETTER, [lay(help_), Part("label", put(chile, o, 56, 430, 180, 500, 300), "frame", 180)]) for o in orders])


def s30(folder):
    orders = [
        {"cells": [("Súly", "1,4 kg"), ("Utánvét", "0 Ft"), ("Darab", "1/1")], "to": ["Példás Borbála", "Minta utca 14. fszt. 2.", "6722 Szeged", "555-0153"], "from": ["Kékfestő Műhely, Próba tér 3.", "7621 Pécs"], "track": "BLK771140028", "zone": "SZ6", "ref": "Rendelés 2026/118"},
        {"cells": [("Súly", "0,3 kg"), ("Utánvét", "8 900 Ft"), ("Darab", "1/1")], "to": ["Teszt és Társa Kft.", "Próbaköz 8.", "9400 Sopron"], "from": ["Kékfestő Műhely, Próba tér 3.", "7621 Pécs"], "track": "BLK771140035", "zone": "GY2", "ref": "Rendelés 2026/121"},
    ]
    def notes():
        k = rows(350, 110, ["1. Vágja ki a címkét.", "2. Ragassza a doboz tetejére.", "3. Adja fel 16 óráig.", "", "Ez az oldal minta."], 11, "T", head="Teendők")
        k.rect(350, 300, 210, 150, 1)
        k.text(455, 370, "10% kedvezmény", 20, "TB", a="m")
        k.text(455, 396, "a következő feladásra", 11, "T", a="m")
        return k

    document(folder, "s30-grey-page-1", "pillow", lambda: Pixels(160, "L", 30), [Page("label", *A4, [Part("label", put(magyar, o, 28, 60)), lay(notes)]) for o in orders])


def s31(folder):
    orders = [
        {"n": "1 of 1", "to": ["Mavis Sample-Reid", "Lot 14 Specimen Gardens", "Mandeville, Manchester", "Jamaica"], "from": ["Breadfruit Prints, 3 Example Lane", "Bridgetown, Barbados"], "port": "KIN-2", "track": "WDK30011847", "note": "Books, 2. Collect at wharf office if not home."},
        {"n": "2 of 3", "to": ["Trial & Daughters Hardware", "Old Mock Road", "Scarborough, Tobago"], "from": ["Breadfruit Prints, 3 Example Lane", "Bridgetown, Barbados"], "port": "TAB-1", "track": "WDK30011855", "note": "Posters in tube."},
    ]
    copy_ = lambda: rows(140, 470, ["Clerk: 04      Date: 3 November", "Received from Breadfruit Prints the sum of $28.50", "for one parcel by sea. Keep this for your records.", "", "Sample receipt, no label."], 12, "T", head="Counter receipt")
    scan = lambda i: (150, (-1.1, 2.0)[i], paper(200 + i, noise=3, shade=16, folds=(0.52,), edge=0.008 * i, tone=240), 32)
    document(folder, "s31-wharf-scan-1", "scan-jpeg", lambda: Raw(), [Page("label", *LETTER, [Part("label", put(island, o, 130, 50), "ink"), lay(copy_)]) for o in orders], scan)


def s32(folder):
    make = lambda city, branch, to, n, what: {"city": city, "branch": branch, "from": ["Майстерня «Глечик»", "вул. Прикладна 5", "м. Полтава", "555-0127"], "to": to, "facts": f"1 місце · {n},5 кг · оплата: одержувач", "what": what, "track": f"5900440188{n}712"}
    orders = [
        make("Львів", "№ 14", ["Зразкова Оксана", "Відділення 14", "вул. Тестова 118", "555-0181"], 1, "глечик"),
        make("Ужгород", "№ 3", ["ФОП Пробний", "вул. Умовна 7, кв. 12"], 4, "миски, 4 шт."),
        make("Суми", "адреса", ["Ганна Взірець-Приклад", "пров. Дослідний 2", "п/с 555"], 2, "свічник"),
    ]
    document(folder, "s32-crossed-square-1", "hand-written", lambda: Raw(words="embedded", pack=False), [Page("label", 283.46, 283.46, [Part("label", put(kyiv, o, 0, 0), "page")]) for o in orders])


def s33(folder):
    orders = [
        {"to": ["Dílna U Vzoru", "Ukázková 40", "602 00 Brno"], "from": ["Květa Příkladová", "Zkušební 3, 301 00 Plzeň"], "track": "SKM5511900842", "ref": "Reklamace R-118 · bez poplatku"},
        {"to": ["Dílna U Vzoru", "Ukázková 40", "602 00 Brno"], "from": ["Ing. Bohdan Modelář", "Na Zkoušku 12, 460 01 Liberec"], "track": "SKM5511900859", "ref": "Výměna V-31 · bez poplatku"},
    ]
    letter = lambda: rows(60, 420, ["Štítek nahoře vystřihněte a nalepte na původní krabici.", "Do krabice vložte tento list s vyplněným důvodem:", "", "[  ] nesedí velikost      [  ] poškozeno      [  ] jiné", "", "Peníze vrátíme do čtrnácti dnů.", "S pozdravem Dílna U Vzoru"], 12, "T", head="Jak zboží vrátit")
    document(folder, "s33-back-on-top-1", "libreoffice", Office, [Page("return-label", *A4, [Part("return-label", put(czech_back, o, 60, 60)), lay(letter)]) for o in orders])


if __name__ == "__main__":
    wanted = sys.argv[2:]
    for key, make in list(globals().items()):
        if len(key) == 3 and key[0] == "s" and key[1:].isdigit() and (not wanted or key in wanted):
            make(sys.argv[1])
            print(key)

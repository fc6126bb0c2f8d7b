"""groff with its own drawing requests; its fonts are Latin only."""
import os
import subprocess

from s_ink import at

NAMES = {"H": "H", "HB": "HB", "HI": "HI", "T": "R", "TB": "B", "TI": "I", "C": "CR", "CB": "CB", "N": "H", "NB": "HB"}


class Groff:
    def __init__(self, w, h):
        self.w, self.h, self.out = w, h, []

    def page(self, ink, w, h):
        if self.out:
            self.out.append(".bp")
        else:
            self.out.append(f".pl {h}p\n.po 0\n.ll {w}p\n.nf\n.ad l\n.vs 0\n.nh")
        self.ops(ink, (1, 0, 0, 1, 0, 0))

    def ops(self, ink, m):
        o = self.out.append
        for op in ink.ops:
            if op[0] == "text":
                x, y = at(m, op[1], op[2])
                s = op[3].replace("\\", "\\e").replace("-", "\\-").replace("'", "\\(aq")
                o(f".sp |{y:.3f}p\n\\h'{x:.3f}p'\\f[{NAMES[op[5]]}]\\s[{op[4]:.2f}z]{s}")
            elif op[0] == "rect" and op[6] is not None:
                (x, y), (z, u) = at(m, op[1], op[2]), at(m, op[1] + op[3], op[2] + op[4])
                shade = f"\\M[{'black' if op[7] == 0 else 'grey'}]"
                o(f".defcolor grey gray {op[7]}\n.sp |{y:.3f}p\n\\h'{x:.3f}p'{shade}\\D'P {z - x:.3f}p 0 0 {u - y:.3f}p {x - z:.3f}p 0'")
            elif op[0] == "rect":
                (x, y), (z, u) = at(m, op[1], op[2]), at(m, op[1] + op[3], op[2] + op[4])
                o(f".sp |{y:.3f}p\n\\D't {op[5] or 0.7}p'\\h'{x:.3f}p'\\D'p {z - x:.3f}p 0 0 {u - y:.3f}p {x - z:.3f}p 0'")
            elif op[0] == "line":
                (x, y), (z, u) = at(m, op[1], op[2]), at(m, op[3], op[4])
                o(f".sp |{y:.3f}p\n\\D't {op[5]}p'\\h'{x:.3f}p'\\D'l {z - x:.3f}p {u - y:.3f}p'")
            elif op[0] == "sub":
                a, b, c, d, e, f = op[2]
                assert b == 0 and a == d == 1
                self.ops(op[1], (1, 0, 0, 1, m[4] + e, m[5] + f))

    def save(self, path):
        source = ("\n".join(self.out) + "\n").encode("utf-8")
        size = f"-P-p{self.h / 72:.4f}i,{self.w / 72:.4f}i"
        done = subprocess.run(["groff", "-Kutf8", "-Tps", size], input=source, capture_output=True)
        if done.returncode:
            raise RuntimeError(done.stderr.decode()[-500:])
        with open(path, "wb") as file:
            file.write(done.stdout)
        command = ["gs", "-q", "-dNOPAUSE", "-dBATCH", "-sDEVICE=pdfwrite", "-dAutoRotatePages=/None", f"-dDEVICEWIDTHPOINTS={self.w}", f"-dDEVICEHEIGHTPOINTS={self.h}", "-dFIXEDMEDIA", "-sOutputFile=" + path + ".out", path]
        subprocess.run(command, check=True, stdout=subprocess.DEVNULL)
        os.replace(path + ".out", path)

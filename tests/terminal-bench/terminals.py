"""Programs on pseudo terminals: started, typed into, watched."""
import collections
import errno
import fcntl
import os
import pty
import re
import select
import signal
import struct
import termios
import time

SILENCE = 0.06
NO_ANSWER = 1.0
LETTER_OF = {"up": "A", "down": "B", "right": "C", "left": "D"}
ESCAPES = re.compile(rb"\x1b\[[0-?]*[ -/]*[@-~]|\x1b\][^\x07\x1b]*(?:\x07|\x1b\\)|\x1b[()].|\x1b[=>78]")
# Question of a program, answer of a terminal: device attributes, state, cursor position (ECMA-48, DEC).
ANSWERS = [(b"\x1b[c", b"\x1b[?62;22c"), (b"\x1b[0c", b"\x1b[?62;22c"), (b"\x1b[>c", b"\x1b[>1;10;0c"), (b"\x1b[5n", b"\x1b[0n"), (b"\x1b[6n", b"\x1b[1;1R")]
Strokes = collections.namedtuple("Strokes", "times sizes")


def environment(folder):
    """What every program sees: no settings of this person's, UTF-8, sixteen colours."""
    return {"PATH": os.environ["PATH"], "HOME": folder, "XDG_DATA_HOME": folder, "XDG_CONFIG_HOME": folder, "LANG": "C.UTF-8", "TERM": "xterm-256color"}


class Session:
    """One program on a terminal of its own."""

    def __init__(self, command, size, folder, marker, patience=20):
        self.marker, self.patience, self.bytes, self.ended = re.compile(marker.encode()), patience, 0, False
        self.painted_ms, self.last_byte = None, None
        self._seen, self._application_keys = b"", False
        self.started = time.perf_counter()
        self.pid, self.file = pty.fork()
        if self.pid == 0:
            fcntl.ioctl(0, termios.TIOCSWINSZ, struct.pack("HHHH", size[1], size[0], 0, 0))
            os.execvpe(command[0], command, environment(folder))

    def __enter__(self):
        return self

    def __exit__(self, *_):
        self.close()

    def fileno(self):
        return self.file

    def read(self):
        """Takes what is there; notes when it came and answers questions."""
        try:
            data = os.read(self.file, 1 << 16)
        except OSError as error:
            if error.errno != errno.EIO:
                raise
            data = b""
        if not data:
            self.ended = True
            return
        self.last_byte = time.perf_counter()
        self.bytes += len(data)
        self._seen = (self._seen + data)[-(1 << 18):]
        on, off = self._seen.rfind(b"\x1b[?1h"), self._seen.rfind(b"\x1b[?1l")
        self._application_keys = on > off
        for question, answer in ANSWERS:
            for _ in range(data.count(question)):
                os.write(self.file, answer)

    def type(self, key):
        letter = LETTER_OF.get(key)
        text = key if letter is None else ("\x1bO" if self._application_keys else "\x1b[") + letter
        os.write(self.file, text.encode())

    def wait_until_painted(self):
        while not self.ended and time.perf_counter() - self.started < self.patience:
            ready, _, _ = select.select([self], [], [], SILENCE)
            if ready:
                self.read()
            elif self.last_byte and self.marker.search(ESCAPES.sub(b"", self._seen)):
                self.painted_ms = 1000 * (self.last_byte - self.started)
                return
        raise RuntimeError(f"nothing painted with {self.marker.pattern!r}; the end of what came: {self._seen[-400:]!r}")

    def rest(self, seconds):
        rest([self], seconds)

    def cpu_seconds(self):
        return sum(int(text.split()[0]) for text in self._of_threads("schedstat")) / 1e9

    def resident_mib(self):
        with open(f"/proc/{self.pid}/status", encoding="ascii") as status:
            return next(int(line.split()[1]) for line in status if line.startswith("VmRSS:")) / 1024

    def _of_threads(self, name):
        for thread in os.listdir(f"/proc/{self.pid}/task"):
            try:
                with open(f"/proc/{self.pid}/task/{thread}/{name}", encoding="ascii") as file:
                    yield file.read()
            except OSError:
                continue

    def close(self):
        try:
            os.kill(self.pid, signal.SIGKILL)
        except ProcessLookupError:
            pass
        os.waitpid(self.pid, 0)
        os.close(self.file)


def rest(sessions, seconds):
    """Types nothing for a while; what comes is still counted."""
    end = time.perf_counter() + seconds
    while (left := end - time.perf_counter()) > 0:
        ready, _, _ = select.select([s for s in sessions if not s.ended], [], [], left)
        for session in ready:
            session.read()


def type_together(sessions, keys, count, interval):
    """Types so many keys into each session, at least so many seconds apart, all sessions at once and out of step."""
    times, sizes, start = [], [], time.perf_counter()
    waiting = {s: {"next": start + interval * at / len(sessions), "left": count, "typed": 0, "sent": None, "bytes": 0} for at, s in enumerate(sessions)}
    while any(state["left"] or state["sent"] for state in waiting.values()):
        now = time.perf_counter()
        for session, state in waiting.items():
            if state["sent"]:
                answered = session.last_byte and session.last_byte > state["sent"]
                if now - (session.last_byte if answered else state["sent"]) < (SILENCE if answered else NO_ANSWER):
                    continue
                if answered:
                    times.append(1000 * (session.last_byte - state["sent"]))
                    sizes.append(session.bytes - state["bytes"])
                state["sent"] = None
            if state["left"] and now >= state["next"]:
                state.update(left=state["left"] - 1, typed=state["typed"] + 1, next=now + interval, bytes=session.bytes, sent=time.perf_counter())
                session.type(keys[state["typed"] % len(keys)])
        ready, _, _ = select.select(sessions, [], [], 0.004)
        for session in ready:
            session.read()
            if session.ended:
                raise RuntimeError("a session ended while it was typed into")
    return Strokes(times, sizes)


def percentile(values, percent):
    ordered = sorted(values)
    return ordered[min(len(ordered) - 1, round(percent / 100 * (len(ordered) - 1)))]

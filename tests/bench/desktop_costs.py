#!/usr/bin/env python3
"""What the desktop costs: from start to first paint, processor and memory while eight lanes run.

Usage: tests/bench/desktop_costs.py FOLDER-WITH-THE-PROGRAMS

Needs Xvfb, xdotool, pulseaudio and libX11. Starts a screen and a sound server of its own. Run it on a quiet machine.
"""
import ctypes
import json
import os
import statistics
import subprocess
import sys
import tempfile
import time

EIGHT_LANES = {
    "basinbell": 1, "name": "Eight lanes", "head": {"kind": "wig"},
    "crew": {"hands": [{"name": "Wig room"}], "basins": 1},
    "coats": [{"name": "Only", "bowls": [{"name": "Bowl", "pot_life": 90}],
               "rinse": [{"name": "All together", "length": 6}],
               "zones": [{"name": name, "bowl": "Bowl", "group": "All together", "apply": 1,
                          "develop": {"least": 30, "target": 40, "most": 90}}
                         for name in ("Root", "Crown", "Left", "Right", "Nape", "Fringe", "Mids", "Ends")]}],
}
SETTLE, WATCH = 5, 40  # Seconds.


class Screen:
    """Reads single pixels, which is quick enough not to slow down what is measured."""

    def __init__(self):
        x = self.x = ctypes.CDLL("libX11.so.6")
        x.XOpenDisplay.restype = ctypes.c_void_p
        x.XDefaultRootWindow.argtypes = [ctypes.c_void_p]
        x.XDefaultRootWindow.restype = ctypes.c_ulong
        x.XGetImage.argtypes = [ctypes.c_void_p, ctypes.c_ulong, ctypes.c_int, ctypes.c_int, ctypes.c_uint,
                                ctypes.c_uint, ctypes.c_ulong, ctypes.c_int]
        x.XGetImage.restype = ctypes.c_void_p
        x.XGetPixel.argtypes = [ctypes.c_void_p, ctypes.c_int, ctypes.c_int]
        x.XGetPixel.restype = ctypes.c_ulong
        x.XDestroyImage.argtypes = [ctypes.c_void_p]
        self.display = x.XOpenDisplay(None)
        self.root = x.XDefaultRootWindow(self.display)

    def pixel(self, left, top):
        image = self.x.XGetImage(self.display, self.root, left, top, 1, 1, 0xFFFFFFFF, 2)
        value = self.x.XGetPixel(image, 0, 0)
        self.x.XDestroyImage(image)
        return value


def first_paint(screen, command):
    """Milliseconds until the middle of the window's top is no longer the black of an empty screen."""
    begun = time.monotonic()
    program = subprocess.Popen(command, stderr=subprocess.DEVNULL)
    while screen.pixel(600, 20) == 0:
        if time.monotonic() - begun > 20:
            sys.exit("The window was not painted within 20 seconds.")
        time.sleep(0.001)
    took = (time.monotonic() - begun) * 1000
    time.sleep(0.5)
    program.kill()
    program.wait()
    time.sleep(0.3)
    return took


def ticks(pid):
    fields = open(f"/proc/{pid}/stat").read().rsplit(")", 1)[1].split()
    return int(fields[11]) + int(fields[12])


def proportional(pid):
    return next(int(line.split()[1]) for line in open(f"/proc/{pid}/smaps_rollup") if line.startswith("Pss:")) / 1024


def press(key):
    # Without a window manager nobody gives the keyboard back when a dialog closes.
    subprocess.run(["xdotool", "search", "--onlyvisible", "--name", ".", "windowfocus", "%@"], check=True)
    time.sleep(0.3)
    subprocess.run(["xdotool", "key", key], check=True)
    time.sleep(1)


def titles():
    return subprocess.run(["xdotool", "search", "--onlyvisible", "--name", ".", "getwindowname", "%@"],
                          capture_output=True, text=True).stdout


def while_lanes_run(programs, folder):
    service = os.path.join(folder, "eight.json")
    with open(service, "w") as file:
        json.dump(EIGHT_LANES, file)
    desktop = subprocess.Popen([f"{programs}/basinbell-desktop", "--data", os.path.join(folder, "run"), service],
                               stderr=subprocess.DEVNULL)
    time.sleep(3)
    for key in ("F3", "Return", "ctrl+Return"):  # "I hear them", start.
        press(key)
    time.sleep(2)  # A start that is pressed twice answers nothing.
    for _ in EIGHT_LANES["coats"][0]["zones"]:  # Begun, and applied.
        press("Return")
        time.sleep(2)
        press("Return")
    if "Rinse" not in titles():
        sys.exit("The lanes did not start; the windows are: " + titles())
    time.sleep(SETTLE)
    sound = int(subprocess.run(["pgrep", "-P", str(desktop.pid), "basinbell-sound"], capture_output=True,
                               text=True, check=True).stdout)
    before = ticks(desktop.pid), ticks(sound)
    time.sleep(WATCH)
    hertz = os.sysconf("SC_CLK_TCK")
    for name, pid, ticked in (("basinbell-desktop", desktop.pid, before[0]), ("basinbell-sound", sound, before[1])):
        share = (ticks(pid) - ticked) / hertz / WATCH * 100
        print(f"{name}: {share:.2f} % of one core over {WATCH} s, {proportional(pid):.0f} MB proportional")
    desktop.kill()
    desktop.wait()


def main():
    if len(sys.argv) != 2:
        sys.exit(__doc__)
    programs = os.path.abspath(sys.argv[1])
    with tempfile.TemporaryDirectory() as folder:
        os.environ.update(HOME=folder, XDG_RUNTIME_DIR=folder, LANG="C.UTF-8", QT_QPA_PLATFORM="xcb")
        read, write = os.pipe()
        xvfb = subprocess.Popen(["Xvfb", "-displayfd", str(write), "-screen", "0", "1280x800x24", "-nolisten", "tcp",
                                 "-noreset"],
                                pass_fds=[write], stderr=subprocess.DEVNULL)
        os.environ["DISPLAY"] = ":" + os.read(read, 16).decode().strip()
        server = subprocess.Popen(["pulseaudio", "-n", "--daemonize=no", "--exit-idle-time=-1", "--use-pid-file=no",
                                   "--load=module-native-protocol-unix", "--load=module-null-sink rate=48000"],
                                  stderr=subprocess.DEVNULL)
        time.sleep(1)
        try:
            demo = [f"{programs}/basinbell-desktop", "--demo", "--data", os.path.join(folder, "demo")]
            paints = sorted(first_paint(Screen(), demo) for _ in range(21))
            print(f"first paint, {len(paints)} warm starts: least {paints[0]:.0f} ms, "
                  f"median {statistics.median(paints):.0f} ms, most {paints[-1]:.0f} ms")
            while_lanes_run(programs, folder)
        finally:
            server.kill()
            xvfb.kill()
            server.wait()
            xvfb.wait()


main()

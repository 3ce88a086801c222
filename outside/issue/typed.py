"""Runs a command at a terminal of its own, types a line where it asks for one, and prints what the terminal showed.

typed.py LINE COMMAND...: LINE is sent once, as keys; exits with the code of the command.
"""

import os
import pty
import sys

line, command = sys.argv[1], sys.argv[2:]
child, terminal = pty.fork()
if child == 0:
    os.execvp(command[0], command)
shown = b""
sent = False
while True:
    try:
        part = os.read(terminal, 1000)
    except OSError:
        break
    if not part:
        break
    shown += part
    if b"Enter: " in shown and not sent:
        os.write(terminal, line.encode())
        sent = True
sys.stdout.write(shown.decode())
sys.exit(os.waitstatus_to_exitcode(os.waitpid(child, 0)[1]))

//! Running other programs: live, watched line by line, or quietly for their answer.

use crate::Outcome;
use std::io::{BufRead, BufReader, Read};
use std::process::{Command, Stdio};
use std::sync::mpsc;
use std::thread;

/// What a program said, and whether it went well.
pub struct Said {
    pub text: String,
    pub well: bool,
}

/// Runs a program with its output going straight to the terminal.
pub fn live(command: &mut Command) -> Outcome {
    let status = command.stdin(Stdio::null()).status().map_err(|reason| cannot_start(command, &reason))?;
    if status.success() { Ok(()) } else { Err(format!("{} ended with {status}.", name(command))) }
}

/// Runs a program quietly and gives back what it printed.
pub fn answer(command: &mut Command) -> Outcome<String> {
    let output = command.stdin(Stdio::null()).output().map_err(|reason| cannot_start(command, &reason))?;
    let text = String::from_utf8_lossy(&output.stdout).into_owned();
    if output.status.success() {
        return Ok(text);
    }
    let reason = String::from_utf8_lossy(&output.stderr).into_owned();
    Err(format!("{} ended with {}.\n{}{}", name(command), output.status, text, reason.trim_end()))
}

/// Runs a program, shows each line through `show` as it comes, and keeps the text.
pub fn watched(command: &mut Command, mut show: impl FnMut(&str)) -> Outcome<Said> {
    command.stdin(Stdio::null()).stdout(Stdio::piped()).stderr(Stdio::piped());
    let mut child = command.spawn().map_err(|reason| cannot_start(command, &reason))?;
    let (send, lines) = mpsc::channel();
    let readers = [
        child.stdout.take().map(|pipe| forward(pipe, send.clone())),
        child.stderr.take().map(|pipe| forward(pipe, send)),
    ];
    let mut text = String::new();
    for line in lines {
        show(&line);
        text.push_str(&line);
        text.push('\n');
    }
    for reader in readers.into_iter().flatten() {
        reader.join().map_err(|_| format!("The output of {} could not be read.", name(command)))?;
    }
    let status = child.wait().map_err(|reason| format!("{} was lost: {reason}.", name(command)))?;
    Ok(Said { text, well: status.success() })
}

/// Runs a program with each line printed as it comes, and keeps the text.
pub fn printed(command: &mut Command) -> Outcome<Said> {
    watched(command, |line| println!("{line}"))
}

/// Cargo, the same one that started us.
pub fn cargo() -> Command {
    let mut command = Command::new(std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into()));
    command.current_dir(crate::place::root());
    command
}

fn forward(pipe: impl Read + Send + 'static, send: mpsc::Sender<String>) -> thread::JoinHandle<()> {
    thread::spawn(move || {
        let mut reader = BufReader::new(pipe);
        let mut bytes = Vec::new();
        while matches!(reader.read_until(b'\n', &mut bytes), Ok(count) if count > 0) {
            let line = String::from_utf8_lossy(&bytes).trim_end().to_owned();
            bytes.clear();
            if send.send(line).is_err() {
                return;
            }
        }
    })
}

fn name(command: &Command) -> String {
    let program = std::path::Path::new(command.get_program()).file_name().unwrap_or_default();
    let first = command.get_args().next().unwrap_or_default();
    format!("`{} {}`", program.to_string_lossy(), first.to_string_lossy())
}

fn cannot_start(command: &Command, reason: &std::io::Error) -> String {
    format!("{} cannot be started: {reason}.", name(command))
}

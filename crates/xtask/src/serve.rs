//! Serving the page on this machine only.

use crate::{Outcome, dist, node, place, tools};
use std::net::TcpListener;
use std::process::Command;

const PORT: u16 = 8750;

/// Makes the page and serves it until stopped.
pub fn serve(arguments: &[String]) -> Outcome {
    let wish = Wish::read(arguments)?;
    wish.port_is_free()?;
    if wish.release { as_shipped(&wish) } else { while_working(&wish) }
}

struct Wish {
    port: u16,
    open: bool,
    release: bool,
}

impl Wish {
    fn read(arguments: &[String]) -> Outcome<Self> {
        let mut wish = Self { port: PORT, open: false, release: false };
        let mut words = arguments.iter();
        while let Some(word) = words.next() {
            match word.as_str() {
                "--open" => wish.open = true,
                "--release" => wish.release = true,
                "--port" => wish.port = port(words.next())?,
                other => match other.strip_prefix("--port=") {
                    Some(number) => wish.port = port(Some(&number.to_owned()))?,
                    None => return Err(format!("serve knows --port N, --open and --release, not “{other}”.")),
                },
            }
        }
        Ok(wish)
    }

    fn port_is_free(&self) -> Outcome {
        let taken = |_| format!("Port {} is in use: try `cargo xtask serve --port {}`.", self.port, next(self.port));
        TcpListener::bind(("127.0.0.1", self.port)).map(drop).map_err(taken)
    }
}

/// A quick build, made again on every change.
fn while_working(wish: &Wish) -> Outcome {
    let mut trunk = dist::trunk_with(&tools::for_page()?)?;
    dist::fetch(|_| Ok(()))?;
    trunk.args(["serve", "--address", "127.0.0.1", "--port", &wish.port.to_string()]);
    trunk.arg("--dist").arg(place::at("target/page"));
    if wish.open {
        trunk.arg("--open");
    }
    println!("Making the page; soon at http://127.0.0.1:{}/ (Ctrl-C stops it)", wish.port);
    become_it(trunk)
}

/// The page as it ships, made once.
fn as_shipped(wish: &Wish) -> Outcome {
    node::check()?;
    dist::dist()?;
    let mut server = Command::new("node");
    server.current_dir(place::root()).arg("tests/browser/serve.mjs").arg(place::dist());
    server.args(["--port", &wish.port.to_string()]);
    if wish.open {
        server.arg("--open");
    }
    become_it(server)
}

/// Turns this process into that program, so that stopping the one stops the other.
#[cfg(unix)]
fn become_it(mut command: Command) -> Outcome {
    use std::os::unix::process::CommandExt;
    let reason = command.exec();
    Err(format!("{} cannot be started: {reason}.", command.get_program().display()))
}

#[cfg(not(unix))]
fn become_it(mut command: Command) -> Outcome {
    crate::run::live(&mut command)
}

fn port(text: Option<&String>) -> Outcome<u16> {
    let unreadable = || "--port takes a number from 1 to 65535.".to_owned();
    text.and_then(|text| text.parse().ok()).filter(|port| *port > 0).ok_or_else(unreadable)
}

fn next(port: u16) -> u16 {
    port.checked_add(1).unwrap_or(PORT)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(words: &[&str]) -> Outcome<Wish> {
        Wish::read(&words.iter().map(|word| (*word).to_owned()).collect::<Vec<_>>())
    }

    #[test]
    fn arguments_are_read() {
        let wish = read(&["--port", "9000", "--open"]).unwrap();
        assert!(wish.port == 9000 && wish.open && !wish.release);
        assert!(read(&["--port=81"]).is_ok_and(|wish| wish.port == 81));
    }

    #[test]
    fn nonsense_is_refused_in_words() {
        assert!(read(&["--port", "0"]).is_err());
        assert!(read(&["--port"]).is_err());
        assert!(read(&["--fast"]).is_err_and(|reason| reason.contains("--fast")));
    }
}

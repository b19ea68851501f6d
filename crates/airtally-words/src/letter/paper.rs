//! Markup in which words stay words.

/// A sheet that is being written.
#[derive(Default)]
pub struct Paper {
    pub markup: String,
}

impl Paper {
    /// Begins an element, with its attributes.
    pub fn open(&mut self, tag: &'static str) {
        for part in ["<", tag, ">"] {
            self.markup.push_str(part);
        }
    }

    /// Ends it; its attributes may stand behind its name.
    pub fn close(&mut self, tag: &'static str) {
        for part in ["</", tag.split(' ').next().unwrap_or_default(), ">"] {
            self.markup.push_str(part);
        }
    }

    /// An element of words.
    #[inline(never)]
    pub fn put(&mut self, tag: &'static str, words: &str) {
        self.open(tag);
        escape(words, &mut self.markup);
        self.close(tag);
    }

    /// Begins a table with these columns, parted by `|`.
    pub fn columns(&mut self, columns: &str) {
        self.open("table");
        self.open("tr");
        for column in columns.split('|') {
            self.put("th scope=\"col\"", column);
        }
    }

    /// A cell of a row.
    #[inline(never)]
    pub fn cell(&mut self, tag: &'static str, words: String) {
        self.put(tag, &words);
    }
}

/// Words as markup that shows exactly them. Marks that turn the direction of what follows are left out: a name must not turn
/// the number behind it.
pub fn escape(words: &str, markup: &mut String) {
    for letter in words.chars() {
        match letter {
            '&' => markup.push_str("&amp;"),
            '<' => markup.push_str("&lt;"),
            '>' => markup.push_str("&gt;"),
            '"' => markup.push_str("&quot;"),
            '\'' => markup.push_str("&#39;"),
            '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}' => {}
            letter if letter.is_control() => markup.push(' '),
            letter => markup.push(letter),
        }
    }
}

package telltally.simulator.format;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import telltally.simulator.document.TextFile;

/** Format files with something wrong, and the lines that an instructor is told; shared by reader and schema tests. */
final class BadFormats {
    /** Everything that a format can say but signs, a lead-in and a frame; one line a field, for the places. */
    static final String EVEN = """
            {
              "schema": "telltally/format/1",
              "id": "test",
              "title": "A test",
              "flashes_s": {"flash": 0.5},
              "code": {"places": [
                {"flash": "flash", "from": 1, "to": 9},
                {"flash": "flash", "from": 1, "to": 9}
              ]},
              "gaps": {"within_digit_s": 0.5, "between_digits_s": 2, "between_codes_s": 4},
              "list": {"list_times": 2},
              "nothing_to_report": {"code": "11"},
              "sessions": {
                "separator_flashes": 1,
                "around_separator_s": 6,
                "flash": "flash",
                "running_test_s": 90,
                "most_balance_flashes": 9
              },
              "burst": {"times_faster": 100}
            }
            """;

    /** A list of codes and nothing else. */
    static final String PLAIN = """
            {
              "schema": "telltally/format/1",
              "id": "test",
              "title": "A test",
              "flashes_s": {"long": 1.2, "short": 0.4},
              "code": {"places": [
                {"flash": "short", "from": 1, "to": 9},
                {"flash": "short", "from": 1, "to": 9}
              ]},
              "lead_in": {"lit_s": 2, "dark_after_s": 2},
              "gaps": {"within_digit_s": 0.4, "between_digits_s": 1, "between_codes_s": 3},
              "list": {"loops": true},
              "framing_code": "12",
              "nothing_to_report": {"blink_on_s": 0.25, "blink_off_s": 0.25}
            }
            """;

    static final String SPELLED = """
            {
              "schema": "telltally/format/1",
              "id": "test",
              "title": "A test",
              "flashes_s": {".": 0.1, "-": 0.3},
              "code": {
                "signs": {"A": ".-", "N": "-."},
                "most_signs": 8
              },
              "gaps": {"within_digit_s": 0.1, "between_digits_s": 0.3, "between_codes_s": 0.7},
              "list": {}
            }
            """;

    static final String LONE = """
            {
              "schema": "telltally/format/1",
              "id": "test",
              "title": "A test",
              "flashes_s": {"flash": 0.3},
              "code": {"places": [{"flash": "flash", "from": 1, "to": 15}]},
              "gaps": {"within_digit_s": 0.3, "before_repeat_s": 3},
              "list": {"loops": true, "most_codes": 1}
            }
            """;

    /**
     * @param line what is told, without the name of the file
     * @param structural whether a JSON Schema can see it as well: a field's name, kind or range, not how two of them
     *     go together
     */
    record BadFormat(String name, String text, String line, boolean structural) {
        TextFile file() {
            return new TextFile("bad.json", text);
        }

        @Override
        public String toString() {
            return name;
        }
    }

    private final List<BadFormat> all = new ArrayList<>();

    private BadFormats() {
        // Two lines a case: its name, a part of the good file and what stands there instead; then what is told.
        // Single quotes stand for the double ones of JSON, \n for a line break.
        table(EVEN, true, """
                no schema | 'schema': 'telltally/format/1', | -
                    1:1: /schema: is missing; expected 'telltally/format/1'
                another schema | telltally/format/1 | telltally/scenario/1
                    2:13: /schema: is 'telltally/scenario/1'; expected 'telltally/format/1'
                a later schema | telltally/format/1 | telltally/format/2
                    2:13: /schema: is 'telltally/format/2'; expected 'telltally/format/1'
                a schema for the editor that is no text | {\\n  'schema' | {'$schema': 1,\\n  'schema'
                    1:13: /$schema: is a number; expected a text
                no id | 'id': 'test', | -
                    1:1: /id: is missing; expected a text
                an id with capitals | 'id': 'test' | 'id': 'My Test'
                    3:9: /id: is 'My Test'; expected small letters, figures and single hyphens
                an id that is a number | 'id': 'test' | 'id': 7
                    3:9: /id: is a number; expected a text
                no title | 'title': 'A test', | -
                    1:1: /title: is missing; expected a text
                an empty title | 'title': 'A test' | 'title': ' '
                    4:12: /title: is empty; a text was expected
                notes that are no text | 'id': 'test', | 'id': 'test', 'notes': ['a'],
                    3:26: /notes: is an array; expected a text
                rests_lit as a text | 'id': 'test', | 'id': 'test', 'rests_lit': 'yes',
                    3:30: /rests_lit: is a text; expected true or false
                a field that nobody knows | 'gaps': | 'gap': 1, 'gaps':
                    10:3: /gap: is not known here; expected one of schema, id, title, notes, rests_lit, flashes_s, code, list, lead_in, gaps, sessions, framing_code, nothing_to_report, burst
                no flashes | 'flashes_s': {'flash': 0.5}, | -
                    1:1: /flashes_s: is missing; expected an object
                flashes as a number | {'flash': 0.5} | 0.5
                    5:16: /flashes_s: is a number; expected an object
                an empty table of flashes | {'flash': 0.5} | {}
                    5:16: /flashes_s: is empty; at least one flash with its seconds was expected
                a flash without a length | {'flash': 0.5} | {'flash': 0}
                    5:26: /flashes_s/flash: is 0; expected seconds from 0.001 to 3600.0
                a flash as a text | {'flash': 0.5} | {'flash': '0.5'}
                    5:26: /flashes_s/flash: is a text; expected a number of seconds
                a flash of more than an hour | {'flash': 0.5} | {'flash': 3601}
                    5:26: /flashes_s/flash: is 3601; expected seconds from 0.001 to 3600.0
                a place that is a number | {'flash': 'flash', 'from': 1, 'to': 9}, | 9,
                    7:5: /code/places/0: is a number; expected an object
                no gaps | 'gaps': {'within_digit_s': 0.5, 'between_digits_s': 2, 'between_codes_s': 4}, | -
                    1:1: /gaps: is missing; expected an object
                no gap between codes | , 'between_codes_s': 4 | -
                    10:11: /gaps/between_codes_s: is missing; expected a number of seconds
                a negative gap | 'between_codes_s': 4 | 'between_codes_s': -4
                    10:77: /gaps/between_codes_s: is -4; expected seconds from 0.001 to 3600.0
                a gap that nobody knows | 'between_codes_s': 4 | 'between_codes_s': 4, 'between_code_s': 4
                    10:80: /gaps/between_code_s: is not known here; expected one of within_digit_s, between_digits_s, between_codes_s, before_repeat_s
                no list | 'list': {'list_times': 2}, | -
                    1:1: /list: is missing; expected an object
                a list as a number | {'list_times': 2} | 2
                    11:11: /list: is a number; expected an object
                a list sent no time | 'list_times': 2 | 'list_times': 0
                    11:26: /list/list_times: is 0; expected a whole number from 1 to 20
                a code sent 21 times | 'list_times': 2 | 'each_code_times': 21
                    11:31: /list/each_code_times: is 21; expected a whole number from 1 to 20
                a list of no code | 'list_times': 2 | 'most_codes': 0
                    11:26: /list/most_codes: is 0; expected a whole number from 1 to 100
                an unknown field of list | 'list_times': 2 | 'times': 2
                    11:12: /list/times: is not known here; expected one of each_code_times, loops, list_times, most_codes
                an unknown field of a pass code | {'code': '11'} | {'code': '11', 'times': 2}
                    12:39: /nothing_to_report/times: is not known here; expected one of code
                a pass code as a number | {'code': '11'} | {'code': 11}
                    12:33: /nothing_to_report/code: is a number; expected a text
                an unknown field of a fast list | 'times_faster': 100 | 'times_faster': 100, 'lead_s': 1
                    20:34: /burst/lead_s: is not known here; expected one of times_faster
                a fast list as fast as the slow one | 'times_faster': 100 | 'times_faster': 1
                    20:29: /burst/times_faster: is 1; expected a whole number from 2 to 1000
                a fast list that does not say how fast | 'times_faster': 100 | -
                    20:12: /burst/times_faster: is missing; expected a whole number
                no separator | 'separator_flashes': 1, | -
                    13:15: /sessions/separator_flashes: is missing; expected a whole number
                no gap around the separator | 'around_separator_s': 6, | -
                    13:15: /sessions/around_separator_s: is missing; expected a number of seconds
                no flash for the separator | 'flash': 'flash',\\n    'running | 'running
                    13:15: /sessions/flash: is missing; expected a text
                no running test | 'running_test_s': 90, | -
                    13:15: /sessions/running_test_s: is missing; expected a number of seconds
                no greatest balance result | 'running_test_s': 90,\\n    'most_balance_flashes': 9 | 'running_test_s': 90
                    13:15: /sessions/most_balance_flashes: is missing; expected a whole number
                a framing code as a flag | 'burst': | 'framing_code': true, 'burst':
                    20:19: /framing_code: is true; expected a text
                a separator of no flash | 'separator_flashes': 1 | 'separator_flashes': 0
                    14:26: /sessions/separator_flashes: is 0; expected a whole number from 1 to 40
                a balance result of no flash | 'most_balance_flashes': 9 | 'most_balance_flashes': 0
                    18:29: /sessions/most_balance_flashes: is 0; expected a whole number from 1 to 40
                segments without a pass code | 'nothing_to_report': {'code': '11'}, | -
                    1:1: /nothing_to_report: a format with 'sessions' needs a code that says there is nothing to report, such as {'code': '11'}
                segments that blink | {'code': '11'} | {'blink_on_s': 1, 'blink_off_s': 1}
                    12:24: /nothing_to_report: a format with 'sessions' needs a code that says there is nothing to report, such as {'code': '11'}
                segments that loop | 'list_times': 2 | 'loops': true
                    11:11: /list: loops; with 'sessions' it would never come to the next segment; expected 'list_times'
                an unknown field of sessions | 'running_test_s': 90 | 'running_test_s': 90, 'prompt': 1
                    17:27: /sessions/prompt: is not known here; expected one of around_separator_s, running_test_s, separator_flashes, flash, most_balance_flashes
                """);
        table(EVEN, false, """
                a field given twice | 'id': 'test', | 'id': 'test', 'id': 'test',
                    3:21: 'id' stands twice in one object; expected once
                two figures at one of several places | {'flash': 'flash', 'from': 1, 'to': 9}, | {'flash': 'flash', 'from': 1, 'to': 10},
                    7:41: /code/places/0/to: is 10; each of several places takes one figure, 1 to 9
                a name of two characters at one of several places | {'flash': 'flash', 'from': 1, 'to': 9}, | {'flash': 'flash', 'counts': {'1': 1, '10': 2}},
                    7:49: /code/places/0/counts/10: is no single character; each of several places takes one
                no gap within a digit | 'within_digit_s': 0.5,  | -
                    10:11: /gaps/within_digit_s: is missing; expected a number of seconds
                no gap between digits | 'between_digits_s': 2,  | -
                    10:11: /gaps/between_digits_s: is missing; expected a number of seconds
                digits that run together | 'between_digits_s': 2 | 'between_digits_s': 0.5
                    10:55: /gaps/between_digits_s: 0.5 is not longer than the gap within a digit (0.5); digits would run together
                codes that run together | 'between_codes_s': 4 | 'between_codes_s': 2.0
                    10:77: /gaps/between_codes_s: 2.0 is not longer than the gap between digits (2.0); codes would run together
                a repeat that runs together | 'between_codes_s': 4 | 'between_codes_s': 4, 'before_repeat_s': 1.5
                    10:99: /gaps/before_repeat_s: 1.5 is not longer than the gap between digits (2.0); codes would run together
                a separator in a flash that is not there | 'flash': 'flash',\\n    'running | 'flash': 'blip',\\n    'running
                    16:14: /sessions/flash: is 'blip'; expected 'flash', as named in /flashes_s
                a separator that runs into the codes | 'around_separator_s': 6 | 'around_separator_s': 4
                    15:27: /sessions/around_separator_s: 4.0 is not longer than the longest gap between codes (4.0); separator and codes would run together
                a separator that looks like a repeat | 'between_codes_s': 4 | 'between_codes_s': 4, 'before_repeat_s': 6
                    15:27: /sessions/around_separator_s: 6.0 is not longer than the longest gap between codes (6.0); separator and codes would run together
                a running test as short as the separator | 'running_test_s': 90 | 'running_test_s': 6
                    17:23: /sessions/running_test_s: 6.0 is not longer than the gap around the separator (6.0); cylinder flashes and codes would run together
                """);
        table(PLAIN, true, """
                loops as a number | 'loops': true | 'loops': 1
                    12:21: /list/loops: is a number; expected true or false
                a list that loops and ends | 'loops': true | 'loops': true, 'list_times': 2
                    12:41: /list/list_times: a list that loops has no number of times; expected either of them
                a lead-in without light | 'lit_s': 2,  | -
                    10:14: /lead_in/lit_s: is missing; expected a number of seconds
                a lead-in without a gap after it | , 'dark_after_s': 2 | -
                    10:14: /lead_in/dark_after_s: is missing; expected a number of seconds
                an empty framing code | 'framing_code': '12' | 'framing_code': ''
                    13:19: /framing_code: is empty; a text was expected
                nothing to say that there is nothing to report | {'blink_on_s': 0.25, 'blink_off_s': 0.25} | {}
                    14:24: /nothing_to_report: says neither a code nor a blink; expected 'code', or 'blink_on_s' and 'blink_off_s'
                half a blink | , 'blink_off_s': 0.25 | -
                    14:24: /nothing_to_report/blink_off_s: is missing; expected a number of seconds
                a pass code that blinks | 'blink_on_s' | 'code': '11', 'blink_on_s'
                    14:24: /nothing_to_report: says both a code and a blink; expected one of them
                an unknown field of a lead-in | 'lit_s': 2 | 'lit_s': 2, 'dark_before_s': 2
                    10:27: /lead_in/dark_before_s: is not known here; expected one of lit_s, dark_after_s
                an unknown field of a blink | 'blink_on_s': 0.25 | 'blink_on_s': 0.25, 'blinks': 8
                    14:45: /nothing_to_report/blinks: is not known here; expected one of blink_on_s, blink_off_s
                """);
        table(PLAIN, false, """
                two flashes of one length | 'long': 1.2 | 'long': 0.40
                    5:40: /flashes_s/short: is 0.4, as long as 'long'; they could not be told apart
                a flash that is not there, of two | {'flash': 'short', 'from': 1, 'to': 9}, | {'flash': 'flash', 'from': 1, 'to': 9},
                    7:15: /code/places/0/flash: is 'flash'; expected 'long' or 'short', as named in /flashes_s
                a lead-in as short as a flash | 'lit_s': 2 | 'lit_s': 1.2
                    10:24: /lead_in/lit_s: 1.2 is not longer than the longest flash (1.2); the lead-in would be counted as a flash
                a framing code that cannot be sent | 'framing_code': '12' | 'framing_code': '10'
                    13:19: /framing_code: '10': the digit 0 at place 2 cannot be sent; this format sends 1 2 3 4 5 6 7 8 9
                a pass code that is the framing code | {'blink_on_s': 0.25, 'blink_off_s': 0.25} | {'code': '12'}
                    14:33: /nothing_to_report/code: is the framing code; a reader could not tell the two apart
                a pass code that cannot be sent | {'blink_on_s': 0.25, 'blink_off_s': 0.25} | {'code': '111'}
                    14:33: /nothing_to_report/code: '111': has 3 digits; this format sends 2
                """);
        table(SPELLED, true, """
                places and a whole table of signs | 'code': { | 'code': {'places': [{'flash': '.', 'from': 1, 'to': 9}],
                    6:11: /code: either 'places' (counted digits) or 'signs' (a table of flashes) was expected
                no signs in the table | {'A': '.-', 'N': '-.'} | {}
                    7:14: /code/signs: is empty; at least one sign with its flashes was expected
                signs as an array | {'A': '.-', 'N': '-.'} | ['.-']
                    7:14: /code/signs: is an array; expected an object
                a sign without flashes | 'A': '.-' | 'A': ''
                    7:20: /code/signs/A: is empty; a text was expected
                a sign as a number | 'A': '.-' | 'A': 2
                    7:20: /code/signs/A: is a number; expected a text
                a sign of two characters | 'A': '.-' | 'AA': '.-'
                    7:21: /code/signs/AA: is no single character; each sign is one
                a sign of 41 flashes | 'A': '.-' | 'A': '.........................................'
                    7:20: /code/signs/A: has 41 flashes; expected at most 40
                no longest code | 'N': '-.'},\\n    'most_signs': 8 | 'N': '-.'}
                    6:11: /code/most_signs: is missing; expected a whole number
                a longest code of 101 signs | 'most_signs': 8 | 'most_signs': 101
                    8:19: /code/most_signs: is 101; expected a whole number from 1 to 100
                """);
        table(SPELLED, false, """
                a sign with a flash that is not there | 'A': '.-' | 'A': '._'
                    7:20: /code/signs/A: names a flash '_'; expected '.' or '-', as named in /flashes_s
                two signs with the same flashes | 'N': '-.' | 'N': '.-'
                    7:31: /code/signs/N: has the same flashes as another sign; they could not be told apart
                a flash whose name is too long to spell with | '.': 0.1, '-': 0.3 | 'dot': 0.1, '-': 0.3
                    5:24: /flashes_s/dot: is no single character; a table of signs writes each flash as one, such as '.'
                letters that run together | 'between_digits_s': 0.3 | 'between_digits_s': 0.1
                    10:55: /gaps/between_digits_s: 0.1 is not longer than the gap within a digit (0.1); digits would run together
                words that run together | 'between_codes_s': 0.7 | 'between_codes_s': 0.3
                    10:79: /gaps/between_codes_s: 0.3 is not longer than the gap between digits (0.3); codes would run together
                """);
        table(LONE, true, """
                no code | 'code': {'places': [{'flash': 'flash', 'from': 1, 'to': 15}]}, | -
                    1:1: /code: is missing; expected an object
                an empty code | {'places': [{'flash': 'flash', 'from': 1, 'to': 15}]} | {}
                    6:11: /code: either 'places' (counted digits) or 'signs' (a table of flashes) was expected
                places with a longest code | 'code': { | 'code': {'most_signs': 4,
                    6:12: /code/most_signs: is not known here; expected one of places
                places and signs | 'code': { | 'code': {'signs': {'A': 'f'},
                    6:11: /code: either 'places' (counted digits) or 'signs' (a table of flashes) was expected
                no place | [{'flash': 'flash', 'from': 1, 'to': 15}] | []
                    6:22: /code/places: holds no place; at least one was expected
                places as a number | [{'flash': 'flash', 'from': 1, 'to': 15}] | 2
                    6:22: /code/places: is a number; expected an array of objects
                an unknown field of code | 'to': 15}] | 'to': 15}], 'most_digits': 1
                    6:65: /code/most_digits: is not known here; expected one of places
                an unknown field of a place | 'to': 15 | 'to': 15, 'up_to': 15
                    6:63: /code/places/0/up_to: is not known here; expected one of flash, from, to
                a place without a flash | 'flash': 'flash',  | -
                    6:23: /code/places/0/flash: is missing; expected a text
                a place without figures | , 'from': 1, 'to': 15 | -
                    6:23: /code/places/0: either 'from' and 'to' or 'counts' was expected
                a place that begins with 0 | 'from': 1 | 'from': 0
                    6:50: /code/places/0/from: is 0; expected a whole number from 1 to 40
                a place that ends beyond 40 | 'to': 15 | 'to': 41
                    6:59: /code/places/0/to: is 41; expected a whole number from 1 to 40
                half a flash | 'to': 15 | 'to': 7.5
                    6:59: /code/places/0/to: is 7.5; expected a whole number
                counts beside from and to | 'to': 15 | 'to': 15, 'counts': {'1': 1}
                    6:23: /code/places/0: either 'from' and 'to' or 'counts' was expected
                empty counts | 'from': 1, 'to': 15 | 'counts': {}
                    6:52: /code/places/0/counts: is empty; at least one digit with its number of flashes was expected
                a digit of no flash | 'from': 1, 'to': 15 | 'counts': {'1': 1, '0': 0}
                    6:66: /code/places/0/counts/0: is 0; expected a whole number from 1 to 40
                a digit without a name | 'from': 1, 'to': 15 | 'counts': {' ': 1}
                    6:58: /code/places/0/counts/ : is blank; a digit has a name that can be read
                no gap before the repeat of a lone code | , 'before_repeat_s': 3 | -
                    7:11: /gaps/before_repeat_s: is missing; expected a number of seconds
                """);
        table(LONE, false, """
                a flash that is not there | 'flash': 'flash' | 'flash': 'flsh'
                    6:33: /code/places/0/flash: is 'flsh'; expected 'flash', as named in /flashes_s
                a place that ends before it begins | 'from': 1, 'to': 15 | 'from': 5, 'to': 3
                    6:59: /code/places/0/to: is 3; expected at least 5, where 'from' begins
                two digits of one count | 'from': 1, 'to': 15 | 'counts': {'1': 1, '0': 1}
                    6:66: /code/places/0/counts/0: has as many flashes as another digit; they could not be told apart
                a lone code that runs into its repeat | 'before_repeat_s': 3 | 'before_repeat_s': 0.3
                    7:54: /gaps/before_repeat_s: 0.3 is not longer than the gap within a digit (0.3); codes would run together
                """);
        table("[1]", true, """
                an array instead of an object | 1 | 2
                    1:1: holds an array; an object was expected: { ... }
                """);
    }

    static List<BadFormat> all() {
        return new BadFormats().all;
    }

    static Stream<BadFormat> structural() {
        return all().stream().filter(BadFormat::structural);
    }

    private void table(String good, boolean structural, String table) {
        List<String> lines = table.lines().map(String::strip).toList();
        for (int i = 0; i < lines.size(); i += 2) {
            List<String> change = List.of(lines.get(i).split(" \\| ", -1));
            String instead = change.get(2).equals("-") ? "" : change.get(2);
            all.add(new BadFormat(
                    change.get(0), changed(good, change.get(1), instead), unquoted(lines.get(i + 1)), structural));
        }
    }

    /** The good file with one part of it exchanged, which must stand in it once. */
    static String changed(String good, String part, String instead) {
        int at = good.indexOf(unquoted(part));
        if (at < 0 || good.indexOf(unquoted(part), at + 1) >= 0) {
            throw new IllegalArgumentException("stands not once in the file: " + part);
        }
        return good.substring(0, at)
                + unquoted(instead)
                + good.substring(at + unquoted(part).length());
    }

    private static String unquoted(String text) {
        return text.replace('\'', '"').replace("\\n", "\n");
    }
}

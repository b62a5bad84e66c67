/* A decoder in C for Telltally's line protocol ("Plug in a decoder" in DEVELOPERS.md): thresholds halfway between the
 * lengths of a format that it is told. Finding keys by their names is enough for lines from one known writer.
 *
 *   cc -O2 -o threshold threshold.c -lm && java -jar trainer/target/telltally.jar score --run ./threshold
 */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

/* Lengths in seconds; 0 where the format has none. The frame is a code around the list that is not part of it. */
static const struct format {
    const char *id, *frame;
    int digits, sessions;
    double flash, within_digit, between_digits, between_codes, lead_in, blink;
} FORMATS[] = {
    {"pair-even", "", 2, 1, 0.5, 0.5, 2.0, 4.0, 0, 0},
    {"triple-even", "", 3, 1, 0.5, 0.5, 2.0, 4.0, 0, 0},
    {"long-short", "", 2, 0, 0.4, 0.4, 1.0, 3.0, 0, 0},
    {"pair-thrice", "12", 2, 0, 0.4, 0.4, 1.2, 3.2, 0, 0},
    {"quad-lead", "", 4, 0, 0.5, 0.5, 2.5, 1e9, 2.5, 0},
    {"pair-loop", "", 2, 0, 0.5, 0.5, 1.5, 2.5, 0, 0.25},
    {"count-loop", "", 1, 0, 0.3, 0.3, 3.0, 3.0, 0, 0},
};
enum { KNOWN = sizeof FORMATS / sizeof FORMATS[0], MOST = 20000 };
enum { PRESENT, STORED, RUNNING, BALANCE, CODES, SEGMENTS };
static const char *const NAMES[] = {"present", "stored", "running", "balance", "codes"};
static double start_s[MOST], end_s[MOST];
static char lists[SEGMENTS][4096]; /* such as ["34","42" */

/* Flashes from edges: bounces are joined, light far too short for a flash is left out. Returns how many there are. */
static int find_flashes(const char *line, double shortest) {
    int lit = strstr(line, "\"lit_at_start\":true") != NULL, count = 0, more = 1;
    const char *at = strstr(line, "\"edges_s\":[") + 11;
    for (double now = 0; more && count < MOST - 1; lit = !lit) {
        char *next;
        double edge = strtod(at, &next);
        more = next != at;
        if (!more) edge = strtod(strstr(line, "\"end_s\":") + 8, NULL);
        if (lit) {
            int bounced = count > 0 && now - end_s[count - 1] < 0.015;
            if (!bounced && (count == 0 || end_s[count - 1] - start_s[count - 1] >= shortest)) count++;
            if (!bounced) start_s[count - 1] = now;
            end_s[count - 1] = edge;
        }
        now = edge;
        at = next + (*next == ',');
    }
    return count > 0 && end_s[count - 1] - start_s[count - 1] < shortest ? count - 1 : count;
}

static void add(int segment, const char *code) {
    char *list = lists[segment], quoted[32];
    snprintf(quoted, sizeof quoted, "\"%s\"", code);
    if (*list == 0) strcpy(list, "[");
    if (*code == 0 || strstr(list, quoted) || strlen(list) > 4000) return; /* an empty list, or a repeat */
    strcat(strcat(list, list[1] ? "," : ""), quoted);
}

/* Flashes are counted into digits, digits into codes. A lone digit in a format with sessions is no code. */
static void read_codes(const struct format *f, int flashes) {
    double new_digit = sqrt(f->within_digit * f->between_digits);
    double new_code = f->digits == 1 ? new_digit : sqrt(f->between_digits * f->between_codes);
    double lead_in = f->lead_in > 0 ? sqrt(f->flash * f->lead_in) : 1e9;
    int segment = f->sessions ? PRESENT : CODES, count = 0, digits = 0, groups = 0;
    char code[16] = "";
    for (int i = 0; i < flashes; i++) {
        int last = i + 1 == flashes;
        double gap = last ? 1e9 : start_s[i + 1] - end_s[i];
        if (end_s[i] - start_s[i] > lead_in) continue;
        if (!last && end_s[i + 1] - start_s[i + 1] > lead_in) gap = 1e9;
        count++;
        if (gap < new_digit) continue;
        if (digits++ < 6) sprintf(code + strlen(code), "%d", count % 100);
        count = 0;
        if (gap < new_code) continue;
        int lone = f->sessions && digits == 1, first = groups++ == 0;
        if (lone && first && last) add(BALANCE, code);
        else if (lone && segment == PRESENT) segment = first && gap > 3 * f->between_codes ? RUNNING : STORED;
        else if (!lone) add(segment, digits == f->digits && strcmp(code, f->frame) != 0 ? code : "");
        digits = code[0] = 0;
    }
}

static void answer(const char *line) {
    const struct format *f = FORMATS;
    const char *told = strstr(line, "\"formats\":[") + 12;
    while (strncmp(told, f->id, strlen(f->id)) != 0) f++; /* one of those that are known, as was asked for */
    int flashes = find_flashes(line, 0.62 * (f->blink > 0 ? f->blink : f->flash));
    memset(lists, 0, sizeof lists);
    if (flashes > 0 && end_s[0] - start_s[0] < sqrt(f->blink * f->flash)) add(CODES, ""); /* nothing to report */
    else read_codes(f, flashes);
    printf("{\"id\":%ld,\"codes\":{", strtol(strstr(line, "\"id\":") + 5, NULL, 10));
    const char *comma = "";
    for (int i = 0; i < SEGMENTS; i++) {
        if (lists[i][0]) printf("%s\"%s\":%s]", comma, NAMES[i], lists[i]), comma = ",";
    }
    printf("}}\n");
}

int main(void) {
    char *line = NULL;
    size_t room = 0;
    setvbuf(stdout, NULL, _IOLBF, 0);               /* every line goes out at once */
    if (getline(&line, &room, stdin) < 0) return 1; /* the greeting */
    printf("{\"schema\":\"telltally/capabilities/1\",\"id\":\"threshold-c\",\"format_told\":true,\"formats\":[");
    for (int i = 0; i < KNOWN; i++) printf("%s\"%s\"", i > 0 ? "," : "", FORMATS[i].id);
    printf("]}\n");
    while (getline(&line, &room, stdin) >= 0) answer(line);
    return 0;
}

/* A decoder in C for Telltally's line protocol: thresholds halfway between the gaps of a format that it is told.
 *
 *   cc -O2 -o threshold threshold.c -lm
 *   java -jar trainer/target/telltally.jar score --run ./threshold
 *
 * One request comes in on each line, one answer goes out; see "Plug in a decoder" in DEVELOPERS.md. A request is read
 * by looking for its keys, which is enough for lines that come from one known writer.
 */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

enum { MOST_FLASHES = 20000, MOST_CODES = 200, LONGEST_CODE = 8 };

/* Lengths in seconds; a gap of 0 is one that the format does not send. */
struct format {
    const char *id;
    int digits;                           /* in a code */
    double flash, long_flash;             /* the usual flash, and a longer one where there is any */
    double within, digit, code, longest;  /* gaps within and between digits, between codes, around lists */
    double lead_in;                       /* a light that opens each code and is no flash */
    double blink;                         /* even blinking, where there is nothing to report */
    const char *frame;                    /* a code that stands around the list and is not part of it */
    int segments;                         /* whether present and stored codes, running test, balance are told apart */
};

static const struct format FORMATS[] = {
    {"pair-even", 2, 0.5, 0, 0.5, 2.0, 4.0, 6.0, 0, 0, "", 1},
    {"triple-even", 3, 0.5, 0, 0.5, 2.0, 4.0, 6.0, 0, 0, "", 1},
    {"long-short", 2, 0.4, 1.2, 0.4, 1.0, 3.0, 0, 0, 0, "", 0},
    {"pair-thrice", 2, 0.4, 0, 0.4, 1.2, 3.2, 0, 0, 0, "12", 0},
    {"quad-lead", 4, 0.5, 0, 0.5, 2.5, 0, 0, 2.5, 0, "", 0},
    {"pair-loop", 2, 0.5, 0, 0.5, 1.5, 2.5, 4.5, 0, 0.25, "", 0},
    {"count-loop", 1, 0.3, 0, 0.3, 0, 3.0, 0, 0, 0, "", 0},
};
enum { KNOWN = sizeof FORMATS / sizeof FORMATS[0] };

static double start_s[MOST_FLASHES], end_s[MOST_FLASHES];
static int flashes;

/* Flashes from edges: gaps of a bouncing contact are closed, light far too short for a flash is left out. */
static void find_flashes(const char *line, const struct format *f) {
    int lit = strstr(line, "\"lit_at_start\":true") != NULL;
    const char *at = strchr(strstr(line, "\"edges_s\""), '[') + 1;
    double now = 0, end = strtod(strstr(line, "\"end_s\":") + 8, NULL);
    int last = 0;
    flashes = 0;
    while (!last) {
        char *next;
        double edge = strtod(at, &next);
        last = next == at;
        if (last) edge = end;
        if (lit && flashes > 0 && now - end_s[flashes - 1] < 0.015) {
            end_s[flashes - 1] = edge;
        } else if (lit && flashes < MOST_FLASHES) {
            start_s[flashes] = now;
            end_s[flashes++] = edge;
        }
        lit = !lit;
        now = edge;
        at = next + (*next == ',');
    }
    int kept = 0;
    double shortest = 0.62 * (f->blink > 0 ? f->blink : f->flash);
    for (int i = 0; i < flashes; i++) {
        if (end_s[i] - start_s[i] >= shortest) {
            start_s[kept] = start_s[i];
            end_s[kept++] = end_s[i];
        }
    }
    flashes = kept;
}

/* How far a length is from the nearest of those that the format sends, as a logarithm of their ratio. */
static double misfit(double length, const double *nominal, int count, double clock) {
    double best = 1;
    for (int i = 0; i < count; i++)
        if (nominal[i] > 0) best = fmin(best, fabs(log(length / (nominal[i] * clock))));
    return best;
}

/* The sender's clock: how much slower than nominal explains flashes and gaps best. */
static double find_clock(const struct format *f) {
    const double lit[] = {f->flash, f->long_flash, f->lead_in, f->blink};
    const double dark[] = {f->within, f->digit, f->code, f->longest, f->blink};
    double best = 1, least = HUGE_VAL;
    for (double clock = 0.75; clock < 1.34; clock += 0.01) {
        double sum = 0.1 * fabs(log(clock));
        for (int i = 0; i < flashes; i++) {
            sum += misfit(end_s[i] - start_s[i], lit, 4, clock);
            if (i > 0) sum += misfit(start_s[i] - end_s[i - 1], dark, 5, clock);
        }
        if (sum < least) {
            least = sum;
            best = clock;
        }
    }
    return best;
}

static const char *const SEGMENTS[] = {"present", "stored", "running", "balance", "codes"};
enum { PRESENT, STORED, RUNNING, BALANCE, CODES };
static char codes[5][MOST_CODES][LONGEST_CODE];
static int code_count[5];

static void add_code(int segment, const char *digits) {
    for (int i = 0; i < code_count[segment]; i++)
        if (strcmp(codes[segment][i], digits) == 0) return; /* a repeat */
    if (code_count[segment] < MOST_CODES) strcpy(codes[segment][code_count[segment]++], digits);
}

/* Counts flashes into digits and digits into codes; returns the segments that were seen, one bit for each. */
static int read_codes(const struct format *f, double clock) {
    double new_digit = clock * (f->digit > 0 ? sqrt(f->within * f->digit) : sqrt(f->within * f->code));
    double new_code = clock * (f->code > 0 ? sqrt((f->digit > 0 ? f->digit : f->within) * f->code) : 1e9);
    int segment = f->segments ? PRESENT : CODES, seen = 0, digits = 0, count = 0, groups = 0;
    char code[64] = "";
    if (flashes > 1 && f->blink > 0 && end_s[0] - start_s[0] < clock * sqrt(f->blink * f->flash)) return 1 << CODES;
    for (int i = 0; i < flashes; i++) {
        double dark = i + 1 < flashes ? start_s[i + 1] - end_s[i] : 1e9;
        int lead_in = f->lead_in > 0 && end_s[i] - start_s[i] > clock * sqrt(f->flash * f->lead_in);
        int before_lead_in =
            f->lead_in > 0 && i + 1 < flashes && end_s[i + 1] - start_s[i + 1] > clock * sqrt(f->flash * f->lead_in);
        if (lead_in) continue;
        count++;
        if (dark < new_digit && !before_lead_in) continue;
        if (digits < LONGEST_CODE - 2) digits += sprintf(code + digits, "%d", count);
        count = 0;
        if (dark < new_code && i + 1 < flashes && !before_lead_in) continue;
        int lone = f->segments && digits == 1;
        if (lone && groups == 0 && i + 1 == flashes) segment = BALANCE; /* nothing but this */
        else if (lone && groups == 0 && dark > 3 * f->code) segment = RUNNING;
        else if (lone && segment == PRESENT) segment = STORED;
        if ((f->digits == 1 || digits == f->digits || segment == BALANCE) && strcmp(code, f->frame) != 0)
            add_code(segment, code);
        if (strcmp(code, f->frame) == 0 || !lone || segment == BALANCE) seen |= 1 << segment;
        digits = 0;
        groups++;
    }
    return seen;
}

static void answer(const char *line) {
    const char *named = strchr(strstr(line, "\"formats\""), '[') + 2;
    const struct format *f = &FORMATS[0];
    for (int i = 0; i < KNOWN; i++)
        if (strncmp(named, FORMATS[i].id, strlen(FORMATS[i].id)) == 0) f = &FORMATS[i];
    memset(code_count, 0, sizeof code_count);
    find_flashes(line, f);
    int seen = read_codes(f, find_clock(f));
    printf("{\"id\":%ld,\"codes\":{", strtol(strstr(line, "\"id\":") + 5, NULL, 10));
    for (int s = 0, first = 1; s < 5; s++) {
        if (!(seen & 1 << s)) continue;
        printf("%s\"%s\":[", first ? "" : ",", SEGMENTS[s]);
        for (int i = 0; i < code_count[s]; i++) printf("%s\"%s\"", i > 0 ? "," : "", codes[s][i]);
        printf("]");
        first = 0;
    }
    printf("}}\n");
}

int main(void) {
    char *line = NULL;
    size_t room = 0;
    if (getline(&line, &room, stdin) < 0) return 1; /* the greeting */
    printf("{\"schema\":\"telltally/capabilities/1\",\"id\":\"threshold-c\",\"format_told\":true,\"formats\":[");
    for (int i = 0; i < KNOWN; i++) printf("%s\"%s\"", i > 0 ? "," : "", FORMATS[i].id);
    printf("]}\n");
    fflush(stdout);
    while (getline(&line, &room, stdin) >= 0) {
        answer(line);
        fflush(stdout);
    }
    return 0;
}

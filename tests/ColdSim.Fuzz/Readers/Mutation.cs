using System.Globalization;
using System.Text;

namespace ColdSim.Fuzz.Readers;

/// <summary>Damages a file as editors, disks, other programs and people do.</summary>
internal static class Mutation
{
    // What is written in files of this kind, and what is written in none.
    private static readonly string[] Words =
    [
        "[", "]", "[[", "]]", "{", "}", "=", "\"", "\"\"\"", "'", "'''", "\\", "\\u0000", "\\uD800", "#", ",", ";", "\t", "|", ".", "..", ":", "-", "+", "\n", "\r\n", "\r", "\0",
        "true", "false", "inf", "-inf", "nan", "null", "\uFEFF", "\u001b[2J", "\u001b]0;x\u0007", "\u009b", "\u202e", "\u2028", "\u200b", "\u007f", "🚐", "é",
        "[cylinder]", "[[cylinder]]", "[[stop]]", "[[option]]", "[option.set]", "[[draw]]", "[[refill]]", "[gas]", "[battery]", "[weather.columns]", "[a.b.c]", "[run]",
        "kind = \"together\"", "grade = \"mix\"", "left = \"0 lb\"", "nights = 400", "start = 9999-12-31T23:59:59Z", "start = 0001-01-01T00:00:00Z", "size = \"420 lb\"", "file = \"s.toml\"", "file = \"\"", "file = \"/\"",
        "2027-01-14T16:00-07:00", "2027-02-30T00:00Z", "2027-01-14", "24:00", "00:00-00:00", "time", "air", "air [°F]", "wind [mph]", "dew point [°C]", "sun [W/m²]", "[°C]", "[kPa]", "nan", "M", "*", "9999", "-9999", "99.9", "-99.9", "T", "VRB",
        "\"hourly\": {", "\"timeseries\": [", "\"coordinates\": [", "location_id,", "Date/Time", "Time Zone", "time(UTC)", "Slope: 0 deg.", "-0067,1", "+9999,9", "LOCATION,", "DATA PERIODS,", "STATION|", "\"periods\": [", "\"elevation\": ", "weight", "line", "float", "echo-percent", "filled", "rested", "percent-of=volume", "31.2 lb", "5 in", "40 %", "10 °F", "lb", "°F", "\"20 lb\"", "\"1e308 lb\"", "\"-1 lb\"", "\"1/0 lb\"",
    ];

    private static readonly string[] Numbers =
    [
        "0", "-0", "1", "-1", "1e308", "-1e308", "1e-320", "9223372036854775807", "-9223372036854775808", "18446744073709551616", "0.0000000001", "999999", "2147483648", "1e400", "0x10", "1_000", "1,5", "1,000", "--1", "1.2.3", "12 1/2", "1/3", "٣",
    ];

    /// <summary>The file with one to four kinds of damage.</summary>
    /// <param name="random">Where chance comes from.</param>
    /// <param name="good">The file.</param>
    /// <param name="other">Another, from which pieces are taken.</param>
    public static byte[] Of(Random random, byte[] good, byte[] other)
    {
        List<byte> bytes = [.. good];
        for (int times = random.Next(3) < 2 ? 1 : random.Next(2, 5); times > 0; times--)
            Damage(random, bytes, other);
        return [.. bytes];
    }

    private static void Damage(Random random, List<byte> bytes, byte[] other)
    {
        int at = random.Next(bytes.Count + 1), length = Math.Min(bytes.Count - at, random.Next(10) == 0 ? random.Next(2000) : random.Next(1, 40));
        switch (random.Next(16))
        {
            case 0 when at < bytes.Count: bytes[at] ^= (byte)(1 << random.Next(8)); break;
            case 1 when at < bytes.Count: bytes[at] = (byte)random.Next(256); break;
            case 2: bytes.RemoveRange(at, length); break;
            case 3: bytes.RemoveRange(at, bytes.Count - at); break;
            case 4: bytes.InsertRange(random.Next(bytes.Count + 1), bytes.GetRange(at, length)); break;
            case 5 when other.Length > 0:
                int from = random.Next(other.Length);
                bytes.InsertRange(at, other[from..Math.Min(other.Length, from + random.Next(1, 400))]);
                break;
            case 6: bytes.InsertRange(at, Encoding.UTF8.GetBytes(Words[random.Next(Words.Length)])); break;
            case 7: Line(random, bytes, lines => lines.RemoveAt(random.Next(lines.Count))); break;
            case 8: Line(random, bytes, lines => lines.Insert(random.Next(lines.Count + 1), lines[random.Next(lines.Count)])); break;
            case 9: Line(random, bytes, lines => lines.Insert(random.Next(lines.Count + 1), Words[random.Next(Words.Length)])); break;
            case 10: Line(random, bytes, lines => (lines[^1], lines[0]) = (lines[0], lines[^1])); break;
            case 11: Token(random, bytes, Words, char.IsLetter); break;
            case 12 when random.Next(20) == 0: bytes.InsertRange(at, Enumerable.Repeat((byte)"[{x,\"\n \0"[random.Next(8)], random.Next(70_000)).ToArray()); break;
            default: Token(random, bytes, Numbers, char.IsAsciiDigit); break;
        }
    }

    private static void Line(Random random, List<byte> bytes, Action<List<string>> change)
    {
        List<string> lines = [.. Encoding.Latin1.GetString([.. bytes]).Split('\n')];
        change(lines);
        Replace(bytes, Encoding.Latin1.GetBytes(string.Join('\n', lines)));
    }

    // Replaces a word, or a number, by another.
    private static void Token(Random random, List<byte> bytes, string[] others, Func<char, bool> isPart)
    {
        string text = Encoding.Latin1.GetString([.. bytes]);
        int start = random.Next(text.Length + 1);
        while (start < text.Length && !isPart(text[start]))
            start++;
        int end = start;
        while (end < text.Length && (isPart(text[end]) || text[end] == '.'))
            end++;
        string other = random.Next(3) == 0 ? random.Next(-1000, 100_000).ToString(CultureInfo.InvariantCulture) : others[random.Next(others.Length)];
        Replace(bytes, [.. Encoding.Latin1.GetBytes(text[..start]), .. Encoding.UTF8.GetBytes(other), .. Encoding.Latin1.GetBytes(text[end..])]);
    }

    private static void Replace(List<byte> bytes, byte[] by)
    {
        bytes.Clear();
        bytes.AddRange(by);
    }
}

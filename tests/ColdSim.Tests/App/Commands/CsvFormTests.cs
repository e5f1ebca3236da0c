using ColdSim.App;
using Xunit;

namespace ColdSim.Tests.App.Commands;

/// <summary>A CSV is in the units that were asked for, and a spreadsheet of the country reads it.</summary>
public class CsvFormTests
{
    [Theory]
    [InlineData("run", "us", "time,UTC offset,outside [°F],wind [mph],inside [°F]", "2027-01-12 16:00:00,-07:00,")]
    [InlineData("run", "si", "time,UTC offset,outside [°C],wind [m/s],inside [°C]", "2027-01-12 16:00:00,-07:00,")]
    [InlineData("trip", "us", "outside low [°F]", "2027-01-12 16:00:00,-07:00,2027-01-13 12:00:00,")]
    [InlineData("trip", "si", "gas used [kg]", "2027-01-12 16:00:00,-07:00,2027-01-13 12:00:00,")]
    [InlineData("compare", "si", "first short,UTC offset,", "-07:00")]
    public void Units_are_in_the_headings_and_the_offset_has_a_column(string command, string units, string heading, string row)
    {
        string[] lines = Written([command, command == "compare" ? Shell.Demo("which-cylinder.toml") : Shell.ColdSnap, "--units", units]);
        Assert.Contains(heading, lines[0], StringComparison.Ordinal);
        Assert.Contains(row, string.Join('\n', lines.Skip(1).Take(6)), StringComparison.Ordinal);
        Assert.All(lines.Where(l => !l.Contains('"', StringComparison.Ordinal)), l => Assert.Equal(lines[0].Count(c => c == ','), l.Count(c => c == ',')));
    }

    [Fact]
    public void With_a_semicolon_go_decimal_commas()
    {
        string[] points = Written(["run", Shell.ColdSnap, "--units", "si"]), commas = Written(["run", Shell.ColdSnap, "--units", "si", "--csv-separator", ";"]);
        Assert.Equal(points, commas.Select(l => l.Replace(',', '.').Replace(';', ',')));
        Assert.NotEqual(points, commas);
    }

    [Fact]
    public void A_temperature_is_the_same_in_both_units()
    {
        double us = FirstOutside("us"), si = FirstOutside("si");
        Assert.Equal(us, si * 1.8 + 32, 0.02);

        static double FirstOutside(string units)
            => double.Parse(Written(["run", Shell.ColdSnap, "--units", units])[1].Split(',')[2], System.Globalization.CultureInfo.InvariantCulture);
    }

    [Fact]
    public void A_file_of_any_form_is_known_as_our_own_and_replaced()
    {
        string path = Path.Combine(Directory.CreateTempSubdirectory().FullName, "trip.csv");
        foreach (string[] form in (string[][])[["--units", "us"], ["--units", "si"], ["--units", "si", "--csv-separator", ";"], ["--units", "us"]])
            Assert.Equal(ExitCode.Done, new Shell().Run(["trip", Shell.ColdSnap, "--csv", path, .. form]));
    }

    [Fact]
    public void Another_separator_is_refused_with_the_two()
    {
        Shell shell = new();
        Assert.Equal(ExitCode.BadInput, shell.Run("run", Shell.ColdSnap, "--csv", "x.csv", "--csv-separator", "|"));
        Assert.Contains("--csv-separator takes , or ;, not '|'", shell.Error, StringComparison.Ordinal);
    }

    private static string[] Written(string[] words)
    {
        string path = Path.Combine(Directory.CreateTempSubdirectory().FullName, "out.csv");
        Shell shell = new();
        Assert.True(shell.Run([.. words, "--csv", path]) == ExitCode.Done, shell.Error);
        return File.ReadAllLines(path);
    }
}

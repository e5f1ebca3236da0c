using ColdSim.Files.Scenarios;
using ColdSim.Tests.App.Commands;
using Xunit;

namespace ColdSim.Tests.Files;

/// <summary>Dates at the ends of the calendar, wherever a date can be written.</summary>
public sealed class CalendarYearTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory().FullName;

    private string Scenario => Path.Combine(_folder, "trip.toml");

    private string Weather => Path.Combine(_folder, "trip.weather.csv");

    public CalendarYearTests() => Starter.Write(Scenario);

    [Theory]
    [InlineData("9999-12-31T23:59:59Z")]
    [InlineData("9999-12-31T23:59:59-14:00")]
    [InlineData("9999-12-31T23:59:59")]
    [InlineData("9999-12-31")]
    [InlineData("9000-01-01T00:00:00Z")]
    [InlineData("0001-01-01T00:00:00+14:00")]
    [InlineData("0999-12-31T23:59:59Z")]
    public void A_date_at_the_calendars_end_is_a_fault_with_its_place(string date)
    {
        string text = File.ReadAllText(Scenario);
        string[] places =
        [
            text.Replace("[run]", $"[run]\nstart = {date}", StringComparison.Ordinal),
            text.Replace("[run]", $"[[stop]]\nfrom = 2025-01-14T16:00:00-07:00\nuntil = {date}\nname = \"x\"\nelevation = \"100 m\"\n[run]", StringComparison.Ordinal),
            text.Replace("[run]", $"[[refill]]\nat = {date}\n[run]", StringComparison.Ordinal),
            text.Replace("[run]", $"from = {date}\n[run]", StringComparison.Ordinal),
            text.Replace("[furnace]", $"[furnace]\nstops_at = {date}", StringComparison.Ordinal),
        ];
        foreach (string changed in places)
        {
            Assert.NotEqual(text, changed);
            File.WriteAllText(Scenario, changed);
            ReadResult read = ScenarioReader.Read(Scenario);
            Assert.Contains(read.Problems, p => p.Line > 1 && (p.What.StartsWith("the year ", StringComparison.Ordinal) || p.What == "a date or time that is not in the calendar")
                && p.Accepted!.EndsWith("years from 1000 to 8999", StringComparison.Ordinal));
            Assert.DoesNotContain(read.Problems, p => p.What.Contains("cannot be opened", StringComparison.Ordinal));
        }
    }

    [Theory]
    [InlineData("9999-12-31T23:00Z")]
    [InlineData("9998-12-31T23:00Z")]
    [InlineData("0500-01-01T00:00Z")]
    public void A_time_of_the_weather_at_the_calendars_end_is_a_fault_with_its_place(string time)
    {
        File.AppendAllText(Weather, $"{time},-20,1,-25,0,25\n");
        Assert.Contains(ScenarioReader.Read(Scenario).Problems, p => p.File == Weather && p.What.Contains(time, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("1000-01-01", "1000-01-02")]
    [InlineData("8999-12-30", "8999-12-31")]
    public void Nothing_overflows_in_the_last_years_that_are_accepted(string first, string last)
    {
        File.WriteAllText(Weather, $"time,air [°C]\n{first}T00:00Z,-10\n{first}T12:00Z,-15\n{last}T12:00Z,-20\n{last}T23:00Z,-20\n");
        File.WriteAllText(Scenario, File.ReadAllText(Scenario).Replace("[run]", $"[run]\nstart = {first}T12:00:00Z", StringComparison.Ordinal).Replace("nights = 3", "nights = 400", StringComparison.Ordinal)
            .Replace("file = \"trip.weather.csv\"", "file = \"trip.weather.csv\"\nbridge = \"31 d\"", StringComparison.Ordinal));
        Shell shell = new();
        foreach (string words in (string[])["run", "trip", "check", "compare", "freeze", "explain"])
        {
            int code = shell.Run(words, Scenario);
            Assert.True(code is 0 or 1, $"{words}: {code} {shell.Error}");
        }

        Assert.Equal(2, shell.Run("log", "add", Scenario, "--weight", "31.2 lb", "--at", "9999-12-31T23:59Z"));
        Assert.Contains("is not a time", shell.Error, StringComparison.Ordinal);
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);
}

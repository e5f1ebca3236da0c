using System.Text;
using ColdSim.Files;
using ColdSim.Files.Scenarios;
using ColdSim.Files.Weather;
using ColdSim.Files.Weather.Formats;
using Xunit;

namespace ColdSim.Tests.Files.Weather;

public class MapProposalTests
{
    private const string Logger = """
        Station 7, exported
        Datum;Uhrzeit;Lufttemperatur (°C);Feuchte %;Windgeschw. km/h;Windrichtung;Böen
        31.12.2030;23:00;-3,5;88;7,2;200;12
        31.12.2030;24:00;-4,5;90;3,6;210;10
        01.01.2031;01:00;-5,5;91;0,0;;4
        Ende der Datei
        """;

    [Fact]
    public void A_map_is_proposed_from_the_headings_and_reads_the_table()
    {
        MapProposal map = Proposed(Logger);
        Assert.Equal(["Datum"], map.Map.Time);
        Assert.Equal(("Uhrzeit", "dd.MM.yyyy HH:mm", 2, ';'), (map.Map.Clock, map.Map.TimeFormat, map.Map.HeaderLine!.Value, map.Map.Separator!.Value));
        Assert.Equal(["air", "humidity", "wind"], map.Map.Columns.Keys.Order(StringComparer.Ordinal));
        Assert.Equal(new MappedColumn("Lufttemperatur (°C)", null), map.Map.Columns["air"]);
        Assert.Equal("km/h", map.Map.Columns["wind"].Unit);
        Assert.Equal(["Windrichtung", "Böen"], map.Unused);
        Assert.True(map.NeedsOffset);
        Assert.Equal([-3.5, -4.5, -5.5], map.Preview.Select(r => r.Celsius()));
        Assert.Equal([], map.Problems);
    }

    [Fact]
    public void The_map_that_is_written_is_the_map_that_is_read()
    {
        MapProposal map = Proposed(Logger);
        using StringWriter text = new() { NewLine = "\n" };
        MapText.Write(map, text);
        (ColumnMap? read, IReadOnlyList<FileProblem> problems) = ColumnsFile.ReadText(text.ToString(), "m");
        Assert.Equal([], problems);
        Assert.Equal(map.Map.Columns, read!.Columns);
        Assert.Equal(map.Map.Time, read.Time);
        Assert.Equal((map.Map.Clock, map.Map.TimeFormat, map.Map.HeaderLine, map.Map.Separator), (read.Clock, read.TimeFormat, read.HeaderLine, read.Separator));
        Assert.True(MapText.Kind.IsOurs(text.ToString()));
    }

    [Fact]
    public void Blanks_a_line_of_units_and_a_date_over_columns_are_seen()
    {
        MapProposal map = Proposed("year month day hour  t_out  rh  wind\n-    -     -   -     degF   %   mph\n2031 1     10  22    14.0   80  5\n2031 1     10  23    5.0    81  3\n");
        Assert.Equal(["year", "month", "day", "hour"], map.Map.Time);
        Assert.Equal((ColumnMap.Blanks, "°F", "mph"), (map.Map.Separator!.Value, map.Map.Columns["air"].Unit, map.Map.Columns["wind"].Unit));
        Assert.Equal([-10, -15], map.Preview.Select(r => r.Celsius()));
    }

    [Fact]
    public void What_the_headings_do_not_say_is_called_a_guess()
    {
        MapProposal map = Proposed("timestamp,temp,pressure\n1/2/2031 6:00,68.0,29.92\n1/2/2031 7:00,66.5,29.90\n");
        Assert.Equal(("M/d/yyyy H:mm", "°F", "inHg"), (map.Map.TimeFormat, map.Map.Columns["air"].Unit, map.Map.Columns["pressure"].Unit));
        Assert.Equal(
            ["months come before days in 'timestamp'; d/M/yyyy H:mm where days come first", "'temp' names no unit of temperature; °F by its numbers", "'pressure' names no unit of pressure; inHg by its numbers"],
            map.Guesses);
    }

    [Theory]
    [InlineData("a,b\n1,2\n", "no line of its first 60 has headings of a time and an air temperature")]
    [InlineData("time,temp\nsoon,1\nlater,2\n", "times such as 'soon' under 'time' are not understood")]
    [InlineData("{\"a\": 1}", "the file is JSON of an unknown kind")]
    public void Where_no_map_can_be_proposed_it_is_said_why(string table, string expected)
        => Assert.Equal(expected, Read(table).Problem!.What);

    [Fact]
    public void A_known_layout_needs_no_map()
        => Assert.Equal("it is EPW (EnergyPlus weather), which is read without a map", Read(Samples.Epw).Problem!.What);

    private static MapProposal Proposed(string table)
    {
        (MapProposal? proposal, FileProblem? problem) = Read(table);
        Assert.Null(problem);
        return proposal!;
    }

    private static (MapProposal? Proposal, FileProblem? Problem) Read(string table)
    {
        using MemoryStream stream = new(Encoding.UTF8.GetBytes(table));
        return MapProposer.Of(stream, "w.csv", null);
    }
}

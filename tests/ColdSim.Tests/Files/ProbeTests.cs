using ColdSim.Files;
using ColdSim.Files.Scenarios;
using Xunit;
using Xunit.Abstractions;
namespace ColdSim.Tests.Files;
public class ProbeTests(ITestOutputHelper o)
{
    [Fact] public void P()
    {
        void Show(string s, string? w=null){ o.WriteLine("-----"); var r=Fixtures.Read(s,w??Fixtures.Weather); foreach(var p in r.Problems) o.WriteLine(p.ToString()); foreach(var p in r.Warnings) o.WriteLine("W "+p); if(r.Scenario is {} x) foreach(var a in x.Assumptions) o.WriteLine("A "+a); }
        Show(StarterScenario.Text("w.csv"), StarterScenario.WeatherText());
        o.WriteLine(StarterScenario.WeatherText()[..400]);
        Show(Fixtures.Least);
        Show("");
        Show("""
        titel = "x"
        [plaec]
        a = 1
        [weather]
        file = "w.csv"
        [cylinder]
        sise = "20 lb"
        size = "20 kb"
        left = "200 %"
        wall = "2 psi"
        diameter = "12,5 in"
        temperature = 20
        tare = "20 stone"
        [furnace]
        input = "25.000 W"
        tries = 2.5
        altitude = "fixed orfice"
        [[draw]]
        rate = "20 mph"
        [regulator]
        droop = [1]
        [[coach.surface]]
        kind = "wal"
        [run]
        start = "2025"
        """);
        Show("[weather]\nfile=\"x.csv\"\n[cylinder]\nsize = 20 lb\nleft = \"half\nwall = \"1 mm\"\n[furnace\ninput = \"3 kW\"\n[gas]\nfoo=1\n");
        Show(Fixtures.Least, "time,air [°C],wnd [m/s],snow\n2025-01-14T16:00-07:00,-5,3,1\n");
        Show(Fixtures.Least, "time,air [°C],wind [m/s],note\n2025-01-14T16:00-07:00,-5,3,1\n2025-01-14T17:00,x,,\n2025-01-14T17:00-07:00,NaN,,\n2025-01-14T18:00-07:00,-5,\"3,5\",\n2025-01-14T18:00-07:00,-500,300,\n2025-01-14T19:00-07:00,-5,1,5,6\n\"2025,1,2,3\n");
        Show(Fixtures.Least, "time;air [°C]\n");
        Show(Fixtures.Least, "time,air\n");
        Show(Fixtures.Least, "");
        Show(Fixtures.Least, "time,air [°C]\n2025-01-14T16:00-07:00,-5\n2025-01-14T17:00-07:00,-5\n2025-01-14T19:00-07:00,-5\n2025-01-14T23:00-07:00,-5\n");
    }
}

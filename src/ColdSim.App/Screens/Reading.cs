using ColdSim.App.Text;
using ColdSim.Model.Engine;

namespace ColdSim.App.Screens;

/// <summary>One value at the time cursor.</summary>
/// <param name="Name">In full.</param>
/// <param name="Brief">The same where room is short.</param>
/// <param name="Value">With its unit.</param>
internal sealed record Reading(string Name, string Brief, string Value)
{
    /// <summary>Every value at the cursor in three rows of four: around, cylinder, gas as gross heat.</summary>
    public static IReadOnlyList<IReadOnlyList<Reading>> At(NightView view)
    {
        RunSeries s = view.Report.Series;
        UnitStyle u = view.Units;
        int i = view.Minute;
        string left = $"{GasWord.Of(view.Report.Scenario.Rig)} left";
        return
        [
            [
                Of("outside", "outside", s.Outside_K[i], u.Temperature),
                Of("inside", "inside", s.Inside_K[i], u.Temperature),
                Of("set point", "set point", s.SetPoint_K[i], u.Temperature),
                Of("wind", "wind", s.Wind_m_s[i], u.Speed),
            ],
            [
                Of("liquid and shell", "liquid", s.Liquid_K[i], u.Temperature),
                Of("cylinder pressure", "cylinder", s.CylinderPressure_Pa[i], u.Pressure),
                Of("delivery pressure", "delivery", s.DeliveryPressure_Pa[i], u.Delivery),
                Of(left, left, s.Propane_kg[i], u.Mass),
            ],
            [
                Of("demand", "demand", s.Asked_W[i], u.PowerNumber),
                Of("given", "given", s.Given_W[i], u.PowerNumber),
                Of("can give now", "can give now", s.CanGiveNow_W[i], u.PowerNumber),
                Of("can keep giving", "can keep", s.CanKeepGiving_W[i], u.Power),
            ],
        ];
    }

    private static Reading Of(string name, string brief, double value, Func<double, string> say)
        => new(name, brief, double.IsNaN(value) ? "none" : say(value));
}

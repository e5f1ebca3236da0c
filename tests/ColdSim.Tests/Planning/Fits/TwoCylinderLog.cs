using ColdSim.Model;
using ColdSim.Model.Arrangement;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Engine;
using ColdSim.Planning;
using ColdSim.Planning.Gauges;
using ColdSim.Planning.Logs;

namespace ColdSim.Tests.Planning.Fits;

/// <summary>How two cylinders of an invented rig are connected.</summary>
internal enum TwoCylinders
{
    /// <summary>An automatic changeover.</summary>
    Changeover,

    /// <summary>Both open on one regulator.</summary>
    Together,

    /// <summary>One open, changed by hand.</summary>
    ByHand,
}

/// <summary>An invented log of a rig with two cylinders, whose truth is known, kept by somebody who forgets.</summary>
/// <remarks>
/// The truth is an <see cref="InventedCoach"/>, run with a finer step. The person weighs both, the one in use or either, with 0.2 lb and a tare
/// off by 1.5 % each, skips one walk in seven, fills what is empty sooner or later, does not mark three fillings in ten, and by hand changes
/// at empty after another delay than the scenario's, or before.
/// </remarks>
internal sealed class TwoCylinderLog
{
    private const double Pound_kg = 0.45359237;
    private const double Low_kg = 1.5;
    private const double Empty_kg = 0.3;

    private enum Habit
    {
        Both,
        InUse,
        Either,
    }

    /// <summary>What the person wrote.</summary>
    public required Scenario Scenario { get; init; }

    /// <summary>The true coach.</summary>
    public required FittedFactors Truth { get; init; }

    /// <summary>What was read.</summary>
    public required IReadOnlyList<LogReading> Readings { get; init; }

    /// <summary>What each cylinder truly held at the end. [kg]</summary>
    public required IReadOnlyList<double> AtEnd_kg { get; init; }

    /// <summary>Place of the cylinder truly in use at the end.</summary>
    public required int InUseAtEnd { get; init; }

    /// <summary>Which cylinders were filled after their last reading.</summary>
    public required IReadOnlyList<bool> FilledUnread { get; init; }

    /// <summary>How many fillings the person did not mark.</summary>
    public required int Unmarked { get; init; }

    /// <summary>Invents one.</summary>
    /// <param name="seed">Of its random numbers; every third one has the same arrangement.</param>
    /// <param name="days">How long.</param>
    public static TwoCylinderLog Of(int seed, int days = 6) => Of(seed, (TwoCylinders)(seed % 3), days);

    /// <summary>Invents one.</summary>
    /// <param name="seed">Of its random numbers.</param>
    /// <param name="how">How the cylinders are connected.</param>
    /// <param name="days">How long.</param>
    public static TwoCylinderLog Of(int seed, TwoCylinders how, int days)
    {
        string size = seed / 3 % 2 == 0 ? "30 lb" : "40 lb";
        CylinderSpecification[] cylinders = [InventedCoach.Cylinder(size) with { Label = "left" }, InventedCoach.Cylinder(size) with { Label = "right" }];
        InventedCoach coach = InventedCoach.Of(seed, days, cylinders);
        CylinderArrangement arrangement = how switch
        {
            TwoCylinders.Changeover => new AutomaticChangeover(),
            TwoCylinders.Together => new OpenTogether(),
            _ => new OneAtATime(),
        };
        Rig made = coach.Made with { Arrangement = how == TwoCylinders.ByHand ? new OneAtATime { NoticedAfter_s = coach.Between(1200, 5400) } : arrangement };
        Habit habit = (Habit)(int)coach.Between(0, 2.999);
        double[] tare_kg = [.. cylinders.Select(c => c.Tare_kg * (1 + 0.015 * coach.Normal()))];
        bool[] filled = new bool[2], marked = new bool[2];
        int unmarked = 0;
        List<LogReading> readings = [];
        TrueRig truth = new(made, coach.Air, [.. cylinders.Select(c => c.LegalFill_kg * coach.Between(0.6, 1))]);
        for (int walk = 0; walk <= 2 * days; walk++)
        {
            double time_s = walk * 43_200 + (walk == 0 ? 0 : 3600 * coach.Between(-1.5, 1.5));
            truth.RunTo(Math.Round(time_s / 60) * 60);
            if (walk == 0 || walk == 2 * days || coach.Between(0, 1) > 1.0 / 7)
            {
                int either = coach.Between(0, 1) < 0.5 ? 0 : 1;
                for (int i = 0; i < 2; i++)
                {
                    if (habit == Habit.InUse && how != TwoCylinders.Together && i != truth.Feeding || habit != Habit.Both && how == TwoCylinders.Together && i != either
                        || habit == Habit.Either && i != either)
                        continue;
                    double scale_kg = Math.Round((truth.Held_kg[i] + tare_kg[i] + 0.2 * Pound_kg * coach.Normal()) / Pound_kg, 1) * Pound_kg;
                    readings.Add(Read(readings.Count + 2, i, InventedCoach.Start.AddSeconds(truth.Time_s), scale_kg, cylinders[i].Tare_kg, filled[i] && marked[i]));
                    unmarked += filled[i] && !marked[i] ? 1 : 0;
                    filled[i] = false;
                }
            }

            for (int i = 0; i < 2 && walk < 2 * days; i++)
            {
                bool must = truth.Held_kg.Sum() < 4;
                if (truth.Held_kg[i] > (how == TwoCylinders.Together ? 2.5 : Empty_kg) || !must && coach.Between(0, 1) < 0.5)
                    continue;
                truth.Fill(i, cylinders[i].LegalFill_kg * coach.Between(0.9, 1));
                (filled[i], marked[i]) = (true, coach.Between(0, 1) > 0.3);
            }

            if (walk < 2 * days && how == TwoCylinders.ByHand && truth.Held_kg[truth.InUse] < Low_kg && truth.Held_kg[1 - truth.InUse] > Low_kg && coach.Between(0, 1) < 0.5)
                truth.Use(1 - truth.InUse);

            // The lever of a changeover is turned to the side that is full when the empty one is filled.
            if (how == TwoCylinders.Changeover && filled[truth.InUse])
                truth.Use(1 - truth.InUse);
        }

        return new()
        {
            Scenario = coach.Scenario with { Rig = coach.Scenario.Rig with { Arrangement = arrangement } },
            Truth = coach.Truth,
            Readings = readings,
            AtEnd_kg = [.. truth.Held_kg],
            InUseAtEnd = truth.Feeding,
            Unmarked = unmarked,
            FilledUnread = filled,
        };
    }

    private static LogReading Read(int line, int cylinder, DateTimeOffset time, double scale_kg, double tare_kg, bool filled) => new()
    {
        Line = line,
        Cylinder = cylinder,
        Time = time,
        Filled = filled,
        Reading = new WeightReading { Name = "weight", Scale_kg = scale_kg, Tare_kg = tare_kg },
        Note = "invented",
    };

    // The true rig from walk to walk.
    private sealed class TrueRig(Rig made, ColdSim.Model.Weather.WeatherSeries air, double[] start_kg)
    {
        private RigState? _state;
        private bool _turned;

        public double[] Held_kg { get; } = start_kg;

        public double Time_s { get; private set; }

        public int InUse { get; private set; }

        // The one that gives gas: of a changeover the reserve side, once the service side is empty.
        public int Feeding => made.Arrangement is AutomaticChangeover && Held_kg[InUse] < 0.2 ? 1 - InUse : InUse;

        public void Fill(int i, double mass_kg) => Held_kg[i] = mass_kg;

        public void Use(int i) => InUse = i;

        public void RunTo(double time_s)
        {
            if (time_s <= Time_s)
                return;
            int[] order = [InUse, 1 - InUse];
            RigState? from = _state is null ? null : _state with
            {
                InUse = 0,
                Cylinders = [.. order.Select(c => _state.Cylinders[_turned ? 1 - c : c] with { Propane_kg = Held_kg[c] })],
            };
            Simulation simulation = new(
                made with { Cylinders = [.. order.Select(c => made.Cylinders[c] with { Contents_kg = Held_kg[c] })] }, air,
                new SimulationSettings { Start = InventedCoach.Start.AddSeconds(Time_s), Duration_s = time_s - Time_s, Step_s = 30, Undersupplied_frac = 0.95, From = from });
            simulation.Run(new Nobody());
            _state = simulation.State();
            _turned = InUse == 1;
            for (int i = 0; i < 2; i++)
                Held_kg[order[i]] = _state.Cylinders[i].Propane_kg;
            if (made.Arrangement is OneAtATime)
                InUse = order[_state.InUse];
            Time_s = time_s;
        }

        private sealed class Nobody : IRunObserver
        {
            public void Stepped(StepRecord record)
            {
            }

            public void Happened(in SimulationEvent happened, in ColdSim.Model.Engine.Snapshot moment)
            {
            }
        }
    }
}

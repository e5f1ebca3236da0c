using ColdSim.Model;
using UnitsNet;

namespace ColdSim.Planning.Logs;

/// <summary>What is wrong with a reading that cannot be right beside the others.</summary>
internal enum Inconsistency
{
    /// <summary>Far from everything else in time, and a whole number of years away from it.</summary>
    WrongYear,

    /// <summary>More is left than at an earlier reading, and no filling lies between.</summary>
    RisesWithoutFilling,

    /// <summary>More was used since an earlier reading than the burners can take.</summary>
    UsedTooFast,
}

/// <summary>A reading that cannot be right beside the others.</summary>
/// <param name="Row">The reading.</param>
/// <param name="Kind">What is wrong.</param>
internal sealed record InconsistentReading(LogRow Row, Inconsistency Kind)
{
    /// <summary>The earlier of the two readings that do not go together; null for a wrong year.</summary>
    public LogRow? Earlier { get; init; }

    /// <summary>The later of the two; null for a wrong year.</summary>
    public LogRow? Later { get; init; }

    /// <summary>The most that all burners together can take in between.</summary>
    public Mass MostUsed { get; init; }

    /// <summary>The time that was probably meant; null where the year is not what is wrong.</summary>
    public DateTimeOffset? Meant { get; init; }
}

/// <summary>The readings of a log that go together, and those that are left out because they cannot be right.</summary>
/// <remarks>
/// <para>Two readings of one cylinder go together where the later one follows a filling, or was confirmed, or is over a month later (nobody notes
/// the filling before a new season), or has neither more left than the
/// earlier one nor less than it with every burner at full input all the time, each within three standard errors of their difference.</para>
/// <para>Of each cylinder's readings as many are kept as go together one after the other; confirmed ones always. Of several such choices the
/// later readings are left out.</para>
/// <para>A rise that nobody marked is taken as a filling, or a change of cylinder, where that keeps two readings more than leaving them out would:
/// a wrong reading is alone, and those after a filling go together with each other.</para>
/// </remarks>
internal sealed class LogConsistency
{
    /// <summary>Standard errors of a difference within which it may be none.</summary>
    public const double Errors = 3;

    /// <summary>Gas that appliances may take which the scenario does not name: base use as a fit assumes it, with its spread. [W]</summary>
    public const double Unnamed_W = 250;

    // A wrong reading stands among good ones; so many in a row would be a log of another cylinder.
    private const int LongestGap = 50;
    private const int MostYears = 30;
    private const double Minute_s = 60;

    // A log has readings every day or so while the cylinder is in use; what is further apart says nothing of each other.
    private static readonly TimeSpan Near = TimeSpan.FromDays(31);

    // In halves of a reading: a filling that nobody marked must save two readings, for one may be wrong.
    private const int HalvesOfReading = 2;
    private const int HalvesOfFilling = 3;

    private LogConsistency(UseLog kept, IReadOnlyList<InconsistentReading> leftOut) => (Kept, LeftOut) = (kept, leftOut);

    /// <summary>The readings that go together.</summary>
    public UseLog Kept { get; }

    /// <summary>The others, in order of time.</summary>
    public IReadOnlyList<InconsistentReading> LeftOut { get; }

    /// <summary>Checks a log's readings.</summary>
    /// <param name="readings">In any order.</param>
    /// <param name="scenario">The scenario.</param>
    public static LogConsistency Of(IReadOnlyList<LogReading> readings, Scenario scenario)
    {
        ArgumentNullException.ThrowIfNull(readings);
        ArgumentNullException.ThrowIfNull(scenario);
        UseLog all = UseLog.Of(readings, scenario.Rig);
        List<InconsistentReading> leftOut = [];
        List<LogRow> inTime = [];
        foreach (LogRow row in all.Rows)
        {
            if (YearMeant(row.Reading, readings, scenario, null) is { } meant)
                leftOut.Add(new(row, Inconsistency.WrongYear) { Meant = meant });
            else
                inTime.Add(row);
        }

        HashSet<LogReading> noticed = new(ReferenceEqualityComparer.Instance);
        for (int c = 0; c < scenario.Rig.Cylinders.Count; c++)
            LeaveOut([.. inTime.Where(r => r.Reading.Cylinder == c)], scenario.Rig, leftOut, noticed);
        if (leftOut.Count == 0 && noticed.Count == 0)
            return new(all, []);
        HashSet<LogReading> dropped = [.. leftOut.Select(l => l.Row.Reading)];
        IEnumerable<LogReading> kept = readings.Where(r => !dropped.Contains(r)).Select(r => noticed.Contains(r) ? r with { Filled = true, FillingNoticed = true } : r);
        return new(UseLog.Of(kept, scenario.Rig), [.. leftOut.OrderBy(l => l.Row.Reading.Time).ThenBy(l => l.Row.Reading.Line)]);
    }

    /// <summary>What is wrong with a reading that is about to be written down; nothing where it may be right.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="others">The readings that the log has.</param>
    /// <param name="scenario">The scenario.</param>
    /// <param name="now">The clock's time.</param>
    public static IReadOnlyList<InconsistentReading> Doubts(LogReading reading, IReadOnlyList<LogReading> others, Scenario scenario, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(reading);
        ArgumentNullException.ThrowIfNull(others);
        ArgumentNullException.ThrowIfNull(scenario);
        LogRow row = new(reading, reading.Contents(scenario.Rig), null, null);
        if (YearMeant(reading, others, scenario, now) is { } meant)
            return [new(row, Inconsistency.WrongYear) { Meant = meant }];
        IReadOnlyList<LogRow> kept = [.. Of(others, scenario).Kept.Rows.Where(r => r.Reading.Cylinder == reading.Cylinder)];
        LogRow? before = kept.LastOrDefault(r => r.Reading.Time <= reading.Time), after = kept.FirstOrDefault(r => r.Reading.Time > reading.Time);
        return
        [
            .. (before is null ? null : Conflict(before, row, row, scenario.Rig)) is { } earlier ? [earlier] : Array.Empty<InconsistentReading>(),
            .. (after is null ? null : Conflict(row, after, row, scenario.Rig)) is { } later ? [later] : Array.Empty<InconsistentReading>(),
        ];
    }

    // The longest chain of readings that go together one after the other: each is joined to the best chain that ends before it.
    private static void LeaveOut(IReadOnlyList<LogRow> rows, Rig rig, List<InconsistentReading> leftOut, HashSet<LogReading> noticed)
    {
        if (rows.Count == 0)
            return;
        int[] kept = new int[rows.Count], from = new int[rows.Count];
        int best = 0;
        for (int i = 0; i < rows.Count; i++)
        {
            (int own, from[i]) = (HalvesOfReading * (rows[i].Reading.Checked ? rows.Count + 1 : 1), -1);
            kept[i] = own;
            for (int j = Math.Max(0, i - LongestGap); j < i; j++)
            {
                if (kept[j] + own <= kept[i])
                    continue;
                int joined = kept[j] + own - CostInHalves(Conflict(rows[j], rows[i], rows[i], rig));
                if (joined > kept[i])
                    (kept[i], from[i]) = (joined, j);
            }

            if (kept[i] > kept[best])
                best = i;
        }

        bool[] stays = new bool[rows.Count];
        for (int i = best; i >= 0; i = from[i])
        {
            stays[i] = true;
            if (from[i] >= 0 && Conflict(rows[from[i]], rows[i], rows[i], rig) is not null)
                noticed.Add(rows[i].Reading);
        }

        LogRow? before = null;
        for (int i = 0; i < rows.Count; i++)
        {
            if (stays[i])
            {
                before = rows[i];
                continue;
            }

            int next = Array.FindIndex(stays, i, s => s);
            InconsistentReading? conflict = before is null ? null : Conflict(before, rows[i], rows[i], rig);
            conflict ??= next < 0 ? null : Conflict(rows[i], rows[next], rows[i], rig);
            if (conflict is null)
                stays[i] = true;
            else
                leftOut.Add(conflict);
        }
    }

    // What a conflict between two readings costs that are both kept; more than any log has where they cannot be.
    private static int CostInHalves(InconsistentReading? conflict) => conflict?.Kind switch
    {
        null => 0,
        Inconsistency.RisesWithoutFilling => HalvesOfFilling,
        _ => int.MaxValue / 2,
    };

    private static InconsistentReading? Conflict(LogRow earlier, LogRow later, LogRow of, Rig rig)
    {
        if (later.Reading.Filled || later.Reading.Checked || later.Reading.Time - earlier.Reading.Time > Near)
            return null;
        double used_kg = earlier.Contents.Mass_kg - later.Contents.Mass_kg, error_kg = Errors * UseLog.UsedUncertainty_kg(earlier.Contents, later.Contents);
        if (used_kg < -error_kg)
            return new(of, Inconsistency.RisesWithoutFilling) { Earlier = earlier, Later = later };
        double most_kg = MostGas_W(rig) * ((later.Reading.Time - earlier.Reading.Time).TotalSeconds + Minute_s) / rig.Gas.HeatingValue_J_kg;
        return used_kg <= most_kg + error_kg ? null : new(of, Inconsistency.UsedTooFast) { Earlier = earlier, Later = later, MostUsed = Mass.FromKilograms(most_kg) };
    }

    private static double MostGas_W(Rig rig)
    {
        double sum_W = Unnamed_W + (rig.Furnace?.Input_W ?? 0);
        foreach (Model.Appliances.GasAppliance appliance in rig.Appliances)
            sum_W += appliance.Input_W;
        return sum_W + (rig.Power?.Generator is { } generator ? generator.Input_W(generator.Rated_W) : 0);
    }

    // Null where the year may be right. The clock counts only for a reading about to be written: what is read back must not depend on the day.
    private static DateTimeOffset? YearMeant(LogReading reading, IReadOnlyList<LogReading> readings, Scenario scenario, DateTimeOffset? now)
    {
        if (reading.Checked)
            return null;
        DateTimeOffset first = scenario.Legs.Count > 0 ? scenario.Legs[0].From : scenario.Weather.First;
        DateTimeOffset last = scenario.Trip is { } trip ? trip.Stops[^1].To : scenario.Weather.Last;
        bool IsKnown(DateTimeOffset time, int readingsNear)
            => (time > first - Near && time < last + Near) || (now is { } clock && (time - clock).Duration() < Near)
                || readings.Count(r => !ReferenceEquals(r, reading) && (r.Time - time).Duration() < Near) >= readingsNear;
        if (IsKnown(reading.Time, 1))
            return null;
        for (int years = 1; years <= MostYears; years++)
        {
            foreach (int sign in (int[])[-1, 1])
            {
                int year = reading.Time.Year + sign * years;
                if (year is < 2 or > 9998)
                    continue;

                // Of two single readings a year apart nobody knows which is wrong, so a log read back needs two to side with.
                DateTimeOffset meant = reading.Time.AddYears(sign * years);
                if (IsKnown(meant, now is null ? 2 : 1))
                    return meant;
            }
        }

        return null;
    }
}

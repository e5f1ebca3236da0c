using ColdSim.Planning.Nights;

namespace ColdSim.App.Text;

/// <summary>
/// A night's events without the endless round of lockout, reset, flame lost: the first round stays, the later ones become one row,
/// and the last end of short gas stays as well.
/// </summary>
/// <param name="Told">What is left to tell.</param>
/// <param name="MoreLockoutsAt">Place of the row that stands for the later lockouts; -1 where there is none.</param>
/// <param name="MoreLockouts">How many it stands for.</param>
internal sealed record LockoutCycles(ReportedEvent[] Told, int MoreLockoutsAt, int MoreLockouts)
{
    private const int FewLockouts = 2;

    public static LockoutCycles Fold(ReportedEvent[] night)
    {
        int lockouts = night.Count(e => e.Kind == ReportedKind.Lockout);
        if (lockouts <= FewLockouts)
            return new(night, -1, 0);
        int first = Array.FindIndex(night, e => e.Kind == ReportedKind.Lockout);
        int second = Array.FindIndex(night, first + 1, e => e.Kind == ReportedKind.Lockout);
        int lastShort = Array.FindLastIndex(night, e => e.Kind is ReportedKind.ShortBegins or ReportedKind.ShortEnds);
        int firstFreezing = Array.FindIndex(night, e => e.Kind == ReportedKind.InsideFreezing);
        List<ReportedEvent> told = [];
        int place = -1;
        for (int i = 0; i < night.Length; i++)
        {
            if (i == second)
                place = told.Count;
            bool stays = i <= first || i == second || i == firstFreezing
                || (i == lastShort && night[i].Kind == ReportedKind.ShortEnds)
                || night[i].Kind is ReportedKind.LiquidGone or ReportedKind.Dry or ReportedKind.LiquidFull
                    or ReportedKind.ReliefPressure or ReportedKind.WeatherEnds;
            if (stays)
                told.Add(night[i]);
        }

        return new([.. told], place, lockouts - 1);
    }
}

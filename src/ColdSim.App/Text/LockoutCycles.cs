using ColdSim.Planning.Nights;

namespace ColdSim.App.Text;

/// <summary>
/// A night's events without the endless round of lockout, reset, flame lost: the first round stays, the later ones become one row,
/// and the last end of short gas stays as well.
/// </summary>
/// <param name="Kept">The events that are left.</param>
/// <param name="MoreLockoutsAt">Place of the row that counts the later lockouts; -1 where there is none.</param>
/// <param name="MoreLockouts">How many later lockouts there are.</param>
internal sealed record LockoutCycles(ReportedEvent[] Kept, int MoreLockoutsAt, int MoreLockouts)
{
    private const int FewLockouts = 2;

    public static LockoutCycles Fold(ReportedEvent[] night)
    {
        int lockouts = night.Count(e => e.Kind == ReportedKind.Lockout);
        if (lockouts <= FewLockouts)
            return new(night, -1, 0);
        int first = Array.FindIndex(night, e => e.Kind == ReportedKind.Lockout);
        int second = Array.FindIndex(night, first + 1, e => e.Kind == ReportedKind.Lockout);
        int lastShort = Array.FindLastIndex(night, e => e.Kind == ReportedKind.ShortBegins || EventKinds.EndsShortage(e.Kind));
        int firstFreezing = Array.FindIndex(night, e => e.Kind == ReportedKind.InsideFreezing);
        List<ReportedEvent> kept = [];
        int place = -1;
        for (int i = 0; i < night.Length; i++)
        {
            if (i == second)
                place = kept.Count;
            bool stays = i <= first || i == second || i == firstFreezing
                || (i == lastShort && EventKinds.EndsShortage(night[i].Kind))
                || EventKinds.Of(night[i].Kind).StaysInRounds;
            if (stays)
                kept.Add(night[i]);
        }

        return new([.. kept], place, lockouts - 1);
    }
}

using Progression.Core.Quantities;

namespace Progression.Core.Library;

/// <summary>What a rung of the stim ladder means for volume, and how long it is expected to last.</summary>
/// <param name="Rung">Which rung.</param>
/// <param name="Title">Its name on screen.</param>
/// <param name="Short">Its name in a narrow cell, at most eight characters.</param>
/// <param name="SessionShare">Share of the regimen's weekly sessions, rounded up to whole sessions; 0 % on the last rung.</param>
/// <param name="ExpectedWeeks">Weeks on the rung in the expected calendar; null on the last rung, which does not end.</param>
/// <param name="Source">Where the volume and the calendar come from.</param>
public sealed record LadderRung(
    Rung Rung, string Title, string Short, Percentage SessionShare, int? ExpectedWeeks, Source Source);

using Progression.Core.Library;

namespace Progression.Core.Plans;

/// <summary>What stands in a cell. An empty cell has no content at all.</summary>
public abstract record CellContent
{
    private protected CellContent()
    {
    }
}

/// <summary>A week of stim: where on the ladder, and how much.</summary>
/// <param name="Rung">The rung of the ladder.</param>
/// <param name="Contractions">Contractions in a session, from 1.</param>
/// <param name="SessionsPerDay">Sessions on each of its days, from 1.</param>
/// <param name="Days">The days on which there is stim.</param>
public sealed record StimCell(Rung Rung, int Contractions, int SessionsPerDay, DaysOfWeek Days) : CellContent
{
    /// <summary>Most contractions in a session that may be entered.</summary>
    public const int MostContractions = 600;

    /// <summary>Most sessions a day that may be entered.</summary>
    public const int MostSessionsPerDay = 6;
}

/// <summary>A week of an exercise.</summary>
/// <param name="Exercise">The id of the exercise in the library.</param>
/// <param name="Dose">How much of it.</param>
public sealed record ActiveCell(string Exercise, ExerciseDose Dose) : CellContent;

/// <summary>What is to be reached by the end of a week, in the unit of the lane's measure.</summary>
/// <param name="Value">The target.</param>
public sealed record TargetCell(double Value) : CellContent;

/// <summary>Skills to be seen by the end of a week.</summary>
/// <param name="Text">The skills, in words.</param>
public sealed record SkillCell(string Text) : CellContent
{
    /// <summary>Most characters.</summary>
    public const int MostCharacters = 400;
}

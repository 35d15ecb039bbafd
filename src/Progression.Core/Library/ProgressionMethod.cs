namespace Progression.Core.Library;

/// <summary>How the dose of an exercise grows while it is given.</summary>
public enum ProgressionMethod
{
    /// <summary>The dose stays as it is.</summary>
    Steady,

    /// <summary>Repetitions are added up to the ceiling.</summary>
    Repetitions,

    /// <summary>Sets are added up to the ceiling.</summary>
    Sets,

    /// <summary>The hold is lengthened up to the ceiling.</summary>
    Hold,

    /// <summary>Minutes are added up to the ceiling.</summary>
    Minutes,

    /// <summary>Load is raised when it has been earned in logged sets (2-for-2); repetitions stay.</summary>
    LoadWhenEarned,

    /// <summary>Load follows the repetitions of the third set (DAPRE); the dose itself stays.</summary>
    Dapre,

    /// <summary>Load is the ten-repetition maximum as last tested, reached in three steps (DeLorme); the dose itself stays.</summary>
    Delorme,
}

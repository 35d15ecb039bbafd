namespace Progression.Core.Library;

/// <summary>The muscle group an exercise loads most. Range work that loads none is <see cref="None"/>.</summary>
public enum MuscleGroup
{
    /// <summary>No muscle is meant to be loaded: range of motion, positioning.</summary>
    None,

    /// <summary>The front of the thigh.</summary>
    Quadriceps,

    /// <summary>The back of the thigh.</summary>
    Hamstrings,

    /// <summary>Buttock and outer hip.</summary>
    Hip,

    /// <summary>Calf.</summary>
    Calf,
}

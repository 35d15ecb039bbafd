using Progression.Core.Quantities;

namespace Progression.Core.Library;

/// <summary>How heavy an exercise is: a mass, a share of the one-repetition maximum, or a rating of effort. Exactly one of them.</summary>
public sealed record ExerciseLoad
{
    private ExerciseLoad()
    {
    }

    /// <summary>The mass moved; null when given otherwise.</summary>
    public Mass? Mass { get; private init; }

    /// <summary>Share of the one-repetition maximum; null when given otherwise.</summary>
    public Percentage? OfMaximum { get; private init; }

    /// <summary>Rating of perceived effort on the 6 to 20 scale; null when given otherwise.</summary>
    public int? Effort { get; private init; }

    /// <summary>A load in kilograms.</summary>
    public static ExerciseLoad Of(Mass mass) => new() { Mass = mass };

    /// <summary>A load as a share of the one-repetition maximum.</summary>
    public static ExerciseLoad Of(Percentage ofMaximum) => new() { OfMaximum = ofMaximum };

    /// <summary>A load by rating of perceived effort.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The rating is not 6 to 20.</exception>
    public static ExerciseLoad AtEffort(int rating)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(rating, 6);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(rating, 20);
        return new ExerciseLoad { Effort = rating };
    }

    /// <summary>"5 kg", "60 %1RM", "effort 13".</summary>
    public override string ToString() =>
        Mass is not null ? Mass.ToString()
        : OfMaximum is not null ? $"{Number.Text(OfMaximum.Percent)} %1RM"
        : $"effort {Effort}";
}

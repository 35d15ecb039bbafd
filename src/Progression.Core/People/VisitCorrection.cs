namespace Progression.Core.People;

/// <summary>What was put right about a whole visit. It is kept, so that nobody has to ask what stood there.</summary>
/// <param name="On">The day it was put right.</param>
/// <param name="By">Who put it right: a role or initials.</param>
/// <param name="Why">Why; null when no reason was given.</param>
public abstract record VisitCorrection(DateOnly On, string By, string? Why)
{
    /// <summary>A value was taken out, because it was not measured at this visit.</summary>
    /// <param name="Measure">The id of the measure.</param>
    /// <param name="Was">The value that stood there, in the measure's unit.</param>
    /// <param name="On">The day it was put right.</param>
    /// <param name="By">Who put it right.</param>
    /// <param name="Why">Why; null when no reason was given.</param>
    public sealed record TakenOut(string Measure, double Was, DateOnly On, string By, string? Why) : VisitCorrection(On, By, Why);

    /// <summary>A question has another answer now, or none.</summary>
    /// <param name="Sign">The id of the sign.</param>
    /// <param name="Was">The answer that stood there.</param>
    /// <param name="On">The day it was put right.</param>
    /// <param name="By">Who put it right.</param>
    /// <param name="Why">Why; null when no reason was given.</param>
    public sealed record AnswerWas(string Sign, Answer Was, DateOnly On, string By, string? Why) : VisitCorrection(On, By, Why);

    /// <summary>The visit was on another day.</summary>
    /// <param name="Was">The day under which it was kept.</param>
    /// <param name="On">The day it was put right.</param>
    /// <param name="By">Who put it right.</param>
    /// <param name="Why">Why; null when no reason was given.</param>
    public sealed record DayWas(DateOnly Was, DateOnly On, string By, string? Why) : VisitCorrection(On, By, Why);
}

using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.Quantities;

namespace Progression.Core.Rules;

/// <summary>Comparisons with a limit; the words and the answer come from the same limit.</summary>
internal static class Compare
{
    internal static Judged AtMost(string what, double? value, Limit limit, Input input) =>
        Against(what, value, limit, input, "at most", value <= limit.Value);

    internal static Judged AtLeast(string what, double? value, Limit limit, Input input) =>
        Against(what, value, limit, input, "at least", value >= limit.Value);

    internal static Judged Over(string what, double? value, Limit limit, Input input) =>
        Against(what, value, limit, input, "over", value > limit.Value);

    internal static Judged Under(string what, double? value, Limit limit, Input input) =>
        Against(what, value, limit, input, "under", value < limit.Value);

    /// <summary>A yes/no sign: holds when the answer is the wanted one.</summary>
    internal static Judged Sign(LadderFacts facts, string sign, bool wanted, string words)
    {
        bool? answer = facts.Now.Assessment.Sign(sign);
        return new Judged(words, Truths.From(answer is null ? null : answer == wanted), [LadderFacts.SignInput(sign, facts.Now)])
        {
            Missing = answer is null ? $"ask: {People.Signs.Questions[sign]}" : null,
        };
    }

    private static Judged Against(string what, double? value, Limit limit, Input input, string relation, bool holds) =>
        new($"{what} is {relation} {limit.Text}", Truths.From(value is null ? null : holds), [input])
        {
            Limits = [limit],
            Margin = value is double number ? $"{Number.Signed(number - limit.Value, 1)} from the limit" : null,
            Missing = value is null ? $"measure: {what}" : null,
            Gaps = value is double read && relation is "at most" or "at least" ? [new Gap(what, read, limit.Value, limit.Unit, relation == "at most")] : [],
        };
}

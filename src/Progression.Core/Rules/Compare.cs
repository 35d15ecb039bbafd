using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.Quantities;

namespace Progression.Core.Rules;

/// <summary>Comparisons with a limit; the words and the answer come from the same limit.</summary>
internal static class Compare
{
    internal static Judged AtMost(string what, double? value, Limit limit, Input input) =>
        Against(what, value, limit, input, "at most", value <= limit.Value);

    internal static Judged AtLeast(string what, double? value, Limit limit, Input input) =>
        Against(what, value, limit, input, "at least", value >= limit.Value);

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

    /// <summary>A red-flag sign: a yes stands until a later visit answers no.</summary>
    internal static Judged Flag(LadderFacts facts, string sign, string words)
    {
        KneeState asked = facts.States.LastOrDefault(state => state.Assessment.Sign(sign) is not null) ?? facts.Now;
        return asked.Assessment.Sign(sign) == true
            ? new Judged(words, Truth.Holds, [LadderFacts.SignInput(sign, asked)])
            : Sign(facts, sign, true, words);
    }

    private static Judged Against(string what, double? value, Limit limit, Input input, string relation, bool holds) =>
        new($"{what} is {relation} {limit.Text}", Truths.From(value is null ? null : holds), [input])
        {
            Limits = [limit],
            Margin = value is double number ? $"{Number.Signed(number - limit.Value, 1)} from the limit" : null,
            Missing = value is null ? $"measure: {what}" : null,
        };
}

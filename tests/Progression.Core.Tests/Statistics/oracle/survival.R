# An independent reckoning of the product-limit estimate, for the tests to compare with.
#
# R's package survival makes the curves; nothing here is taken from the C#. Run:  Rscript survival.R > survival.json
# The versions stand in the output. The first two cases are the remission times of Freireich and others 1963 (Blood 21:699), as textbooks print them.
library(survival)

six_mp <- list(time = c(6, 6, 6, 6, 7, 9, 10, 10, 11, 13, 16, 17, 19, 20, 22, 23, 25, 32, 32, 34, 35),
               status = c(1, 1, 1, 0, 1, 0, 1, 0, 0, 1, 1, 0, 0, 0, 1, 1, 0, 0, 0, 0, 0))
placebo <- list(time = c(1, 1, 2, 2, 3, 4, 4, 5, 5, 8, 8, 8, 8, 11, 11, 12, 12, 15, 17, 22, 23), status = rep(1, 21))
cases <- list(
  "6-MP" = six_mp, "placebo" = placebo,
  "all censored" = list(time = c(2, 3, 3, 7), status = c(0, 0, 0, 0)),
  "none censored, all at once" = list(time = c(4, 4, 4), status = c(1, 1, 1)),
  "one event" = list(time = 5, status = 1),
  "one censored" = list(time = 5, status = 0),
  "half exactly, then another" = list(time = c(1, 2, 3, 4), status = c(1, 1, 1, 1)),
  "half exactly, then nobody" = list(time = c(1, 2, 3, 4), status = c(1, 1, 0, 0)),
  "censored where others have the event" = list(time = c(3, 3, 3, 5, 5, 5), status = c(1, 0, 1, 0, 1, 0)))
set.seed(20261125)
for (i in 1:40) {
  n <- sample(c(3, 8, 21, 60, 120), 1)
  event <- rweibull(n, shape = runif(1, 0.6, 2.5), scale = 8)
  last <- runif(n, 1, 30)
  # Visits: whole days in half of them, so that there are many ties.
  grain <- if (i %% 2) 1 / 7 else 1
  time <- pmax(grain, ceiling(pmin(event, last) / grain) * grain)
  cases[[paste("random", i)]] <- list(time = time, status = as.integer(event <= last))
}

number <- function(x) ifelse(is.na(x), "null", sprintf("%.13g", x))
row <- function(name, values) sprintf('"%s": [%s]', name, paste(number(values), collapse = ", "))
levels <- c(0.95, 0.8)
one <- function(name, level) {
  case <- cases[[name]]
  fit <- survfit(Surv(case$time, case$status) ~ 1, conf.type = "log-log", conf.int = level, timefix = FALSE)
  half <- summary(fit)$table[c("median", paste0(level, "LCL"), paste0(level, "UCL"))]
  paste0('{ "name": "', name, '", "level": ', level, ", ", row("of", case$time), ", ", row("happened", case$status), ", ",
         row("time", fit$time), ", ", row("at_risk", fit$n.risk), ", ", row("events", fit$n.event), ", ", row("censored", fit$n.censor), ", ",
         row("waiting", fit$surv), ", ", row("low", fit$lower), ", ", row("high", fit$upper), ", ", row("median", half), " }")
}
rows <- unlist(lapply(names(cases), function(name) sapply(levels, function(level) one(name, level))))
cat('{ "r": "', R.version.string, '", "survival": "', as.character(packageVersion("survival")), '",\n"cases": [\n', sep = "")
cat(paste(rows, collapse = ",\n"), "\n] }\n")

# Recomputes population-survey.json: Rscript population-survey.R FOLDER > population-survey.json
# FOLDER holds the public individual measurements of ANSUR II (Gordon et al. 2014, NATICK/TR-15/007), people with
# even subject numbers, as ansur-ii-female-even-subjects.csv and ansur-ii-male-even-subjects.csv.
folder <- commandArgs(trailingOnly = TRUE)[1]
read <- function(sex) {
  d <- read.csv(file.path(folder, sprintf("ansur-ii-%s-even-subjects.csv", sex)))
  d$torso <- d$cervicaleheight - d$iliocristaleheight
  d$mass <- d$weightkg / 10
  d
}
number <- function(x) format(x, digits = 12)
# Given a stature and a mass: the least-squares prediction, and the residual spread on n - 1 like the covariances.
given <- function(d, y, stature, mass) {
  m <- lm(as.formula(paste(y, "~ stature + mass")), d)
  c(predict(m, data.frame(stature = stature, mass = mass)), sqrt(sum(resid(m)^2) / (nrow(d) - 1)))
}
normality <- function(x) {
  n <- length(x); z <- sort((x - mean(x)) / sd(x)); i <- 1:n
  a <- -n - mean((2 * i - 1) * (pnorm(z, log.p = TRUE) + pnorm(rev(z), lower.tail = FALSE, log.p = TRUE)))
  m2 <- mean((x - mean(x))^2)
  c(a, a * (1 + 0.75 / n + 2.25 / n^2), mean((x - mean(x))^3) / m2^1.5, mean((x - mean(x))^4) / m2^2 - 3)
}
cases <- list(women = list("female", 1710, 70), men = list("male", 1700, 95))
out <- sapply(names(cases), function(who) {
  case <- cases[[who]]; d <- read(case[[1]])
  rows <- sapply(c("torso", "waistbacklength", "waistcircumference", "buttockcircumference", "chestcircumference"), function(y) {
    g <- given(d, y, case[[2]], case[[3]])
    sprintf('      {"column": "%s", "mean": %s, "sd": %s}', y, number(g[1]), number(g[2]))
  })
  t <- normality(d$torso)
  sprintf(paste0('  "%s": {\n    "people": %d, "statureMm": %d, "massKg": %d,\n    "given": [\n%s\n    ],\n',
                 '    "torsoNormality": {"statistic": %s, "adjusted": %s, "skewness": %s, "excessKurtosis": %s},\n',
                 '    "correlations": {"statureTorso": %s, "waistHip": %s, "chestMass": %s}\n  }'),
          who, nrow(d), case[[2]], case[[3]], paste(rows, collapse = ",\n"),
          number(t[1]), number(t[2]), number(t[3]), number(t[4]),
          number(cor(d$stature, d$torso)), number(cor(d$waistcircumference, d$buttockcircumference)),
          number(cor(d$chestcircumference, d$mass)))
})
cat(sprintf('{\n  "source": "ANSUR II public individual data (Gordon et al. 2014, NATICK/TR-15/007), even subject numbers",\n  "origin": "recomputed with R %s",\n%s\n}\n',
            getRversion(), paste(out, collapse = ",\n")))
